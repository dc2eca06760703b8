using System.Collections.Frozen;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Clauses;

/// <summary>"Swapped" for a part put in place of another, and not for wires or units that changed places.</summary>
internal static class Swaps
{
    private static readonly string[] After = ["the", "a", "out", "in", "it", "my", "for", "already", "twice", "once",
        "last", "yesterday", "today", "before", "recently", "with"];
    private static readonly string[] Before = ["already", "been", "got", "had", "have"];

    /// <summary>What changes places with its like: "wires swapped", "the two heads got swapped".</summary>
    private static readonly FrozenSet<string> Pairs = new[]
    {
        "wires", "wire", "cores", "core", "leads", "lead", "cables", "phases", "phase", "terminals", "pairs", "pipes",
        "lines", "ports", "numbers", "heads", "zones",
        "connections", "linesets", "tubes", "pins", "conductors", "legs", "wiring", "piping", "around", "over", "round",
        "places", "1", "2", "3", "l1", "l2", "l3",
    }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>
    /// "swapped the board", "pump swapped out", "board has been swapped", "swapped indoor board no change".
    /// </summary>
    public static bool Is(List<Token> clause, int at)
    {
        if (clause[at].Said is not ("swapped" or "swap"))
            return false;
        var (before, next) = (at > 0 ? clause[at - 1].Said : "", at + 1 < clause.Count ? clause[at + 1].Said : "");
        if (before == "already" || (next is "the" or "a" or "out" or "in" or "it" or "my" or "for" or "already"))
            return true;
        return (Before.Contains(before) || After.Contains(next) || clause[at].Position == clause[0].Position)
            && !clause.Any(token => Pairs.Contains(token.Said) || token.Said.Split(' ').Any(Pairs.Contains));
    }
}
