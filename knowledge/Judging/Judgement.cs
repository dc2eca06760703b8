using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;

namespace DxAssistant.Knowledge.Judging;

/// <summary>What readings say, how sure that is, and how it was reached.</summary>
/// <param name="Probabilities">Of each verdict the judge can give; they sum to 1. Empty when the readings are
/// impossible.</param>
/// <param name="OddOneOut">The reading, or the terminal, that stands out of a set; null when none does.</param>
/// <param name="Expected">What a healthy unit shows, reading by reading or figure by figure.</param>
/// <param name="ToSettleKey">
/// What would settle a verdict that is too close to call or impossible, as the id of a phrase; null when settled.
/// See <see cref="Judging.ToSettle"/>.
/// </param>
/// <param name="DecisionRule">The rule by which the verdict was taken, with its probability: <c>JCGM 106, p ≥
/// 0.95</c>.</param>
/// <param name="Source">Of the expectation.</param>
/// <param name="PatternKey">A pattern a set of readings shows, as the id of a phrase, such as
/// <c>one-terminal-open</c>; null when none.</param>
public sealed record Judgement(
    VerdictKind Verdict,
    ImmutableSortedDictionary<VerdictKind, double> Probabilities,
    string? OddOneOut,
    ImmutableArray<ExpectedBand> Expected,
    Derivation Derivation,
    string? ToSettleKey,
    string DecisionRule,
    Citation Source,
    string? PatternKey = null);
