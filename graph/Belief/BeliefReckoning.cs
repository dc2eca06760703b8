using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph;

/// <summary>Bayes over exclusive faults: prior times the likelihood of each piece of evidence, normalised.</summary>
internal sealed class BeliefReckoning
{
    private readonly FaultId[] candidates;
    private readonly double[] priors;
    private readonly ImmutableArray<EvidenceColumn> columns;

    private readonly ContradictionFloor floor;

    private BeliefReckoning(FaultGraph graph, ImmutableArray<Evidence> evidence, Predicate<FaultId>? applies,
        ContradictionFloor floor)
    {
        this.floor = floor;
        ImmutableArray<Evidence> counted = EvidenceSieve.Counted(graph, evidence);
        candidates = [.. Candidates.Of(graph, counted, applies)];
        priors = [.. candidates.Select(id => graph.Find(id)!.Weight)];
        Normalise(priors);
        EvidenceColumns reader = new(graph, candidates, priors, [.. counted.OfType<Evidence.SymptomReported>()]);
        columns = [.. counted.Select(reader.Of)];
    }

    public static Belief Reckon(
        FaultGraph graph, ImmutableArray<Evidence> evidence, Predicate<FaultId>? applies, ContradictionFloor floor)
    {
        BeliefReckoning reckoning = new(graph, evidence, applies, floor);
        double[] weights = reckoning.Weights();
        if (Normalise(weights)) return reckoning.Told(weights, exhausted: false);

        // The outcomes exclude every fault: somebody slipped, so an impossible outcome becomes a very unlikely one.
        foreach (EvidenceColumn column in reckoning.columns) column.AllowSlips();
        weights = reckoning.Weights();
        return reckoning.Told(weights, exhausted: !Normalise(weights));
    }

    // Multiplied in an order of its own, so that the order of telling cannot change the last bit.
    private double[] Weights()
    {
        double[] weights = [.. priors];
        foreach (EvidenceColumn column in columns.OrderBy(column => column.SortKey, StringComparer.Ordinal))
            for (int fault = 0; fault < weights.Length; fault++) weights[fault] *= column.Likelihoods[fault];
        return weights;
    }

    private Belief Told(double[] weights, bool exhausted)
    {
        OutcomeFit fit = new(columns, candidates.Length, floor);
        return new Belief(Rank(weights), Ledger(), fit.Best, fit.Conflicts, fit.Contradicted, exhausted);
    }

    // Rounded before ranking: the last bits are no reason to put one fault before another.
    private ImmutableArray<RankedFault> Rank(double[] weights) =>
    [
        .. candidates.Select((id, fault) => new RankedFault(id, weights[fault]))
            .OrderByDescending(ranked => Math.Round(ranked.Probability, 12)).ThenBy(ranked => ranked.Id),
    ];

    private ImmutableArray<LedgerLine> Ledger()
    {
        double[] belief = [.. priors];
        ImmutableArray<LedgerLine>.Builder lines = ImmutableArray.CreateBuilder<LedgerLine>(columns.Length);
        foreach (EvidenceColumn column in columns)
        {
            var before = Named(belief);
            double expected = 0;
            for (int fault = 0; fault < belief.Length; fault++) expected += belief[fault] *= column.Likelihoods[fault];
            lines.Add(new LedgerLine(column.Evidence, Math.Min(1, expected),
                Named(column.Likelihoods.Select(likelihood => Math.Log(likelihood))), before));
            Normalise(belief);
        }

        return lines.MoveToImmutable();
    }

    private ImmutableSortedDictionary<FaultId, double> Named(IEnumerable<double> values) =>
        candidates.Zip(values, KeyValuePair.Create).ToImmutableSortedDictionary();

    private static bool Normalise(double[] weights)
    {
        double sum = 0;
        foreach (double weight in weights) sum += weight;
        if (!(sum > 0)) return false;
        for (int fault = 0; fault < weights.Length; fault++) weights[fault] /= sum;
        return true;
    }
}
