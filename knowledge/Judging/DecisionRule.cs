using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>When a verdict stands.</summary>
/// <remarks>Source: JCGM 106:2012, clause 7; the probability asked for is the default rule of ISO 14253-1:2017 (95
/// %).</remarks>
public static class DecisionRule
{
    /// <summary>A verdict stands when its probability is this or more.</summary>
    public const double Probability = 0.95;

    /// <summary>The rule with its source, as it goes with every verdict.</summary>
    public const string Text = "JCGM 106:2012, clause 7; probability 0.95 or more (ISO 14253-1:2017)";

    // Systems may differ in the last bits of an exponential; nine decimals are the same on all of them.
    private const int Decimals = 9;

    internal static Judgement Take(IJudge judge, Finding finding)
    {
        var probabilities = Rounded(judge, finding.Weights);
        var best = probabilities.OrderByDescending(pair => pair.Value).ThenBy(pair => pair.Key).First();
        var stands = best.Value >= Probability;
        return new Judgement(
            stands ? best.Key : VerdictKind.TooCloseToCall, probabilities, finding.OddOneOut, finding.Expected,
            finding.Derivation,
            stands ? null : finding.Settle, Text, finding.Source, finding.Pattern);
    }

    internal static Judgement Impossible(string settle, Derivation derivation, string? which, Citation source) => new(
        VerdictKind.Impossible, ImmutableSortedDictionary<VerdictKind, double>.Empty, which, [], derivation, settle,
            Text, source);

    private static ImmutableSortedDictionary<VerdictKind,
        double> Rounded(IJudge judge, ImmutableSortedDictionary<VerdictKind, double> weights)
    {
        var rounded = judge.Verdicts.ToDictionary(
            verdict => verdict, verdict => Math.Round(Math.Clamp(weights.GetValueOrDefault(verdict), 0, 1), Decimals));
        var best = rounded.OrderByDescending(pair => pair.Value).ThenBy(pair => pair.Key).First().Key;
        rounded[best] = Math.Round(1 - rounded.Where(pair => pair.Key != best).Sum(pair => pair.Value), Decimals);
        return rounded.ToImmutableSortedDictionary();
    }
}
