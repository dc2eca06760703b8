using System.Collections.Immutable;
using DxAssistant.Knowledge.Walks;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>
/// The rules laid over the plan by the names that pages call them, and what they may cost where no page says it.
/// </summary>
public static class RuleShapes
{
    // Common practice, no source.
    private static readonly ImmutableArray<(LaidRule Rule, string Name, RuleLimit Usual)> All =
    [
        (LaidRule.FirstIn, "safe state first", RuleLimit.Any),
        (LaidRule.NearTie, "near tie", new RuleLimit(1, 0.01)),
        (LaidRule.Foregone, "foregone answer", new RuleLimit(0, 0.05)),
        (LaidRule.NothingFound, "nothing found", new RuleLimit(30, 0.5)),
        (LaidRule.Proof, "proof before part", new RuleLimit(45, 0.25)),
        (LaidRule.OwnWork, "own work before a visit", new RuleLimit(30, 0)),
        (LaidRule.ForTheNext, "questions for whoever comes next", new RuleLimit(5, 0)),
        (LaidRule.Custom, "custom of the trade", new RuleLimit(10, 0)),
    ];

    /// <summary>All names, in the order in which the rules are asked.</summary>
    public static ImmutableArray<string> Names { get; } = [.. All.Select(each => each.Name)];

    /// <summary>What pages and figures call a rule.</summary>
    public static string NameOf(LaidRule rule) => All.First(each => each.Rule == rule).Name;

    internal static RuleLimit UsualOf(LaidRule rule) => All.First(each => each.Rule == rule).Usual;
}
