using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search.Terms;

/// <summary>"Heat pump" is the unit by its common name, and no pump of it.</summary>
internal static class HeatPumps
{
    private const string Unit = "heatpump";

    /// <summary>Words that make it the name of another machine.</summary>
    private static readonly string[] Others = ["dryer", "drier", "tumble", "washer", "boiler", "cylinder", "pool"];

    /// <summary>The words with each "heat pump" as one.</summary>
    public static ImmutableArray<Word> Named(ImmutableArray<Word> words)
    {
        if (!words.Any(word => word.Text == "heat"))
            return words;
        var named = ImmutableArray.CreateBuilder<Word>(words.Length);
        for (var at = 0; at < words.Length; at++)
        {
            var isUnit = IsUnit(words, at);
            named.Add(isUnit ? words[at] with { Text = Unit } : words[at]);
            at += isUnit ? 1 : 0;
        }
        return named.ToImmutable();
    }

    // "won't heat pump runs" lacks a comma.
    private static bool IsUnit(ImmutableArray<Word> words, int at) =>
        words[at].Text == "heat" && at + 1 < words.Length
            && words[at + 1] is { Text: "pump" or "pumps", StartsClause: false }
        && (at == 0 || words[at].StartsClause || words[at - 1].Text is not ("no" or "not" or "without"))
        && (at + 2 == words.Length || words[at + 2].StartsClause || !Others.Contains(words[at + 2].Text));
}
