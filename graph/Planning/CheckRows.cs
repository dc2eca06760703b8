using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Planning;

/// <summary>The rows of one check by the places of their faults.</summary>
internal sealed class CheckRows
{
    private readonly int[] faults;
    private readonly double[] own;
    private readonly ImmutableArray<double> everyOther;

    /// <param name="places">The place of each fault, rising with the id; all that the check lists are in it.</param>
    public CheckRows(Check check, Dictionary<FaultId, int> places)
    {
        everyOther = check.EveryOtherFault;
        faults = new int[check.Likelihoods.Count];
        own = new double[faults.Length * everyOther.Length];
        int line = 0;
        foreach ((FaultId fault, ImmutableArray<double> row) in check.Likelihoods)
        {
            faults[line] = places[fault];
            row.CopyTo(own, line++ * everyOther.Length);
        }
    }

    /// <summary>P(outcome | fault) for all outcomes.</summary>
    public ReadOnlySpan<double> Of(int fault) =>
        Array.BinarySearch(faults, fault) is >= 0 and int line
            ? own.AsSpan(line * everyOther.Length, everyOther.Length)
            : everyOther.AsSpan();
}
