using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;

namespace DxAssistant.Knowledge.Judging;

/// <summary>What a judge found, before the rule of decision is put to it.</summary>
/// <param name="Weights">Probability of each verdict.</param>
/// <param name="Settle">What would settle it, should it be too close to call.</param>
internal sealed record Finding(
    ImmutableSortedDictionary<VerdictKind, double> Weights,
    Derivation Derivation,
    ImmutableArray<ExpectedBand> Expected,
    string Settle,
    Citation Source)
{
    public string? OddOneOut { get; init; }

    public string? Pattern { get; init; }

    /// <summary>Nothing but one verdict, certain.</summary>
    public static ImmutableSortedDictionary<VerdictKind, double> Certainly(VerdictKind verdict) =>
        ImmutableSortedDictionary<VerdictKind, double>.Empty.Add(verdict, 1);
}
