using System.Collections.Frozen;

namespace DxAssistant.Knowledge.Readings.Numbers;

/// <summary>The words that numbers are said in.</summary>
internal static class NumberWords
{
    private static readonly FrozenDictionary<string, int> Small =
        ("zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen "
            + "seventeen eighteen nineteen")
            .Split(' ').Select((word, value) => (word, value))
            .Concat("twenty thirty forty fifty sixty seventy eighty ninety".Split(' ')
                .Select((word, place) => (word, value: 20 + 10 * place)))
            .Concat([("nought", 0), ("naught", 0), ("fourty", 40), ("ninty", 90), ("niner", 9)])
            .ToFrozenDictionary(pair => pair.Item1, pair => pair.Item2, StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, double> Scales = new Dictionary<string, double>
    {
        ["hundred"] = 100, ["thousand"] = 1_000, ["million"] = 1_000_000,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, double> Parts = new Dictionary<string, double>
    {
        ["half"] = 0.5, ["third"] = 1.0 / 3, ["thirds"] = 1.0 / 3, ["quarter"] = 0.25, ["quarters"] = 0.25,
            ["tenth"] = 0.1,
        ["tenths"] = 0.1, ["eighth"] = 0.125, ["eighths"] = 0.125,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>0 to 19, or a round number of tens up to 90; null for any other word.</summary>
    public static int? SmallOf(string word) => Small.TryGetValue(word, out int value) ? value : null;

    /// <summary>100, 1000 or 1,000,000; null for any other word.</summary>
    public static double? ScaleOf(string word) => Scales.TryGetValue(word, out double value) ? value : null;

    /// <summary>The value of half, quarter and the like; null for any other word.</summary>
    public static double? PartOf(string word) => Parts.TryGetValue(word, out double value) ? value : null;

    public static bool IsPoint(string word) => word is "point" or "dot" or "decimal";

    /// <summary>A zero inside a number: "two oh eight".</summary>
    public static bool IsOh(string word) => word is "oh" or "o" or "zero" or "nought" or "naught";
}
