using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>The words that pages use for the verdicts of a calculation.</summary>
internal static class VerdictWords
{
    private static readonly ImmutableSortedDictionary<string, VerdictKind> Known = new Dictionary<string, VerdictKind>
    {
        ["absent"] = VerdictKind.Absent,
        ["within"] = VerdictKind.Within,
        ["low"] = VerdictKind.Low,
        ["high"] = VerdictKind.High,
        ["reversed"] = VerdictKind.Reversed,
        ["unequal"] = VerdictKind.Unequal,
        ["open circuit"] = VerdictKind.OpenCircuit,
        ["short circuit"] = VerdictKind.ShortCircuit,
        ["closed"] = VerdictKind.Closed,
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    public static IEnumerable<string> All => Known.Keys;

    public static VerdictKind? Read(string word) => Known.TryGetValue(word, out VerdictKind kind) ? kind : null;

    public static string Of(VerdictKind kind) => Known.First(pair => pair.Value == kind).Key;

    /// <summary>The words of a cell, which stand between commas.</summary>
    public static string[] Split(string cell) =>
        cell.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
}
