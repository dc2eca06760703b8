using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph;

/// <summary>How likely each fault is, given everything learnt, and how that came about.</summary>
/// <remarks>
/// The order of the evidence changes the ledger's <see cref="LedgerLine.Expected"/>, never the ranking.
/// </remarks>
/// <param name="Ranked">
/// The candidates, most likely first, ties by id; probabilities sum to 1, or are all 0 when <see cref="Exhausted"/>.
/// </param>
/// <param name="Ledger">One line for each piece of evidence that counts, in the order it came.</param>
/// <param name="Fit">
/// How well the best fault explains the outcomes seen: product of P(seen | fault) / P(most likely outcome | fault), 0
/// to 1. 1 when each check showed what that fault shows most often.
/// </param>
/// <param name="Conflicts">
/// When the outcomes contradict each other: the checks without any one of which the rest would fit, or, when no
/// single one is to blame, those that the best fault seldom shows. The one most out of place first, ties by id.
/// </param>
/// <param name="Contradicted">
/// True when no fault explains the outcomes: each is below the floor that was asked for.
/// </param>
/// <param name="Exhausted">True when repairs tried have excluded every candidate.</param>
public sealed record Belief(
    ImmutableArray<RankedFault> Ranked,
    ImmutableArray<LedgerLine> Ledger,
    double Fit,
    ImmutableArray<CheckId> Conflicts,
    bool Contradicted,
    bool Exhausted)
{
    /// <summary>
    /// P(symptom | fault) of a fault that explains another reported symptom but is not listed in this one.
    /// </summary>
    public const double Leak = 0.01;

    /// <summary>
    /// The likelihood an impossible outcome is given when the outcomes exclude every fault: somebody slipped.
    /// </summary>
    public const double Slip = 1e-6;

    /// <summary>0 for a fault that is no candidate.</summary>
    public double ProbabilityOf(FaultId fault)
    {
        foreach (RankedFault ranked in Ranked)
            if (ranked.Id == fault) return ranked.Probability;
        return 0;
    }

    /// <summary>What a check may show, in the order of its outcomes; what it cannot show is left out.</summary>
    public IEnumerable<Foreseen> Foresee(Check check)
    {
        for (int outcome = 0; outcome < check.Outcomes.Length; outcome++)
        {
            double total = 0, most = 0;
            FaultId likeliest = default;
            foreach (RankedFault ranked in Ranked)
            {
                double weight = ranked.Probability * check.Row(ranked.Id)[outcome];
                total += weight;
                if (weight > most) (most, likeliest) = (weight, ranked.Id);
            }

            if (total > 0) yield return new Foreseen(check.Outcomes[outcome], total, likeliest, most / total);
        }
    }
}
