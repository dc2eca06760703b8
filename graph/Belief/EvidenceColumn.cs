using System.Collections.Immutable;

namespace DxAssistant.Graph;

/// <summary>P(one piece of evidence | fault) for each candidate.</summary>
/// <param name="sortKey">Kind and id; unique among the evidence that counts.</param>
/// <param name="relative">
/// For an outcome: the likelihood against that of the fault's most likely outcome, 0 to 1; else null.
/// </param>
/// <param name="rows">
/// For an outcome: how likely each of the check's outcomes is under each candidate; else null.
/// </param>
internal sealed class EvidenceColumn(
    Evidence evidence, string sortKey, double[] likelihoods, double[]? relative = null,
    ImmutableArray<double>[]? rows = null)
{
    public Evidence Evidence { get; } = evidence;
    public string SortKey { get; } = sortKey;
    public double[] Likelihoods { get; } = likelihoods;
    public double[]? Relative { get; } = relative;
    public ImmutableArray<double>[]? Rows { get; } = rows;

    /// <summary>
    /// Lets every candidate show this outcome, if only by a slip. A repair that failed stays certain.
    /// </summary>
    public void AllowSlips()
    {
        if (Evidence is not Evidence.OutcomeSeen) return;
        for (int fault = 0; fault < Likelihoods.Length; fault++)
            Likelihoods[fault] = Math.Max(Likelihoods[fault], Belief.Slip);
    }
}
