using System.Collections.Immutable;

namespace DxAssistant.Graph.Model;

/// <summary>One thing done at the unit to learn something.</summary>
/// <param name="Minutes">How long it takes once the unit stands ready; 0 or more.</param>
/// <param name="Access">The access states in which it may be done, preferred first; at least one.</param>
/// <param name="Who">The least role that may do it.</param>
/// <param name="Outcomes">What can be seen; two or more.</param>
/// <param name="Likelihoods">
/// P(outcome | fault) in the order of <paramref name="Outcomes"/>; each row sums to 1.
/// </param>
/// <param name="EveryOtherFault">The row of each fault that <paramref name="Likelihoods"/> does not list.</param>
public sealed record Check(
    CheckId Id,
    double Minutes,
    ImmutableArray<AccessId> Access,
    Role Who,
    ImmutableArray<OutcomeId> Outcomes,
    ImmutableSortedDictionary<FaultId, ImmutableArray<double>> Likelihoods,
    ImmutableArray<double> EveryOtherFault)
{
    /// <summary>
    /// The access state in which the unit stands once it is done; null when that is where it was done.
    /// </summary>
    /// <remarks><see cref="Minutes"/> hold the way there, so they are no less than it takes.</remarks>
    public AccessId? Leaves { get; init; }

    /// <summary>How far from 1 a row may sum: room for numbers written with few digits.</summary>
    public const double RowTolerance = 1e-6;

    // Likelihoods closer than this are the same number written twice.
    private const double SameLikelihood = 1e-12;

    /// <summary>P(outcome | <paramref name="fault"/>), in the order of <see cref="Outcomes"/>.</summary>
    public ImmutableArray<double> Row(FaultId fault) =>
        Likelihoods.TryGetValue(fault, out ImmutableArray<double> row) ? row : EveryOtherFault;

    /// <summary>The place of an outcome in <see cref="Outcomes"/>, or −1.</summary>
    public int IndexOf(OutcomeId outcome) => Outcomes.IndexOf(outcome);

    /// <summary>Whether an outcome is more likely under one fault than under another.</summary>
    public bool Tells(OutcomeId outcome) => IndexOf(outcome) is >= 0 and int place
        && Likelihoods.Values.Any(row => Math.Abs(row[place] - EveryOtherFault[place]) > SameLikelihood);

    /// <summary>True when some outcome is more likely under one of these faults than under another.</summary>
    public bool Separates(IReadOnlyCollection<FaultId> among)
    {
        ImmutableArray<double>? first = null;
        foreach (FaultId fault in among)
        {
            first ??= Row(fault);
            if (RowsDiffer(first.Value, Row(fault))) return true;
        }

        return false;
    }

    internal static bool RowsDiffer(ImmutableArray<double> left, ImmutableArray<double> right)
    {
        for (int outcome = 0; outcome < left.Length; outcome++)
            if (Math.Abs(left[outcome] - right[outcome]) > SameLikelihood) return true;
        return false;
    }
}
