using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>One row of a check's likelihoods.</summary>
/// <param name="Row">As written.</param>
/// <param name="Fault">The fault's page, or null when the row is not of a known fault.</param>
/// <param name="IsEveryOther">True for the row <c>every other fault</c>.</param>
/// <param name="Written">What each cell says, blank cells null.</param>
/// <param name="Readable">False when a cell is neither blank, nor a known word, nor a number above 0 and below
/// 1.</param>
internal sealed record LikelihoodRow(
    TableRow Row, Page? Fault, bool IsEveryOther, ImmutableArray<double?> Written, bool Readable)
{
    /// <summary>How far from 1 a row may sum before it is scaled to 1.</summary>
    public const double Slack = 0.05;

    public double Sum => Written.Sum(value => value ?? 0);

    public bool HasBlank => Written.Contains(null);

    /// <summary>True when the blank cells have something left to share, or else the sum is 1 within the
    /// slack.</summary>
    // The sum is rounded first: 0.7 + 0.3 + 0.05 must not fail for its last bit.
    public bool SumsToOne => HasBlank ? Math.Round(Sum, 9) < 1 : Math.Round(Math.Abs(Sum - 1), 9) <= Slack;

    /// <summary>The likelihoods with blanks filled and scaled to 1; only for a row that sums to 1.</summary>
    public ImmutableArray<double> Scaled()
    {
        double share = HasBlank ? (1 - Sum) / Written.Count(value => value is null) : 0;
        double total = HasBlank ? 1 : Sum;
        return [.. Written.Select(value => (value ?? share) / total)];
    }
}
