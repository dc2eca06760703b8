using System.Collections.Frozen;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Clauses;

/// <summary>
/// Healthy words that say nothing of health where they stand: "spirit level", "live terminal", "straight after", "works
/// only if".
/// </summary>
internal static class OtherSense
{
    private static readonly FrozenSet<string> Conditions = Set("if unless only until till");

    /// <summary>Words before a healthy word that make it something else.</summary>
    private static readonly FrozenDictionary<string, FrozenSet<string>> After =
        new Dictionary<string, FrozenSet<string>>(StringComparer.Ordinal)
    {
        ["level"] = Set("spirit water pan oil the a"), ["right"] = Set("the came come"),
        ["turn"] = Set("a of quarter half each every one to"),
        ["run"] = Set("a pipe cable long short thin skinny to of"), ["work"] = Set("the to of"),
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Words after a healthy word that make it something else.</summary>
    private static readonly FrozenDictionary<string, FrozenSet<string>> Before =
        new Dictionary<string, FrozenSet<string>>(StringComparer.Ordinal)
    {
        ["live"] = Set("terminal terminals wire screw conductor core lead pin side"),
        ["right"] = Set("side hand back away after through off end at up next above under beside behind on ontop"),
        ["straight"] = Set("after away on off to from into up out back in at the"), ["clean"] = Set("off through out"),
        ["clear"] = Set("metre meter meters metres m water"), ["fine"] = Set("again mesh dust"), ["ok"] = Set("again"),
        ["normal"] = Set("again"),
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Words that are healthy only after one of these: "windings are even", but not "not even".</summary>
    private static readonly FrozenDictionary<string, FrozenSet<string>> OnlyAfter =
        new Dictionary<string, FrozenSet<string>>(StringComparer.Ordinal)
    {
        ["even"] = Set("is are all read reads out be measure"), ["sound"] = Set("is are all be was were seems looks"),
        ["home"] = Set("fully clicked pushed right all well firmly is are"),
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Whether the word at a place of a clause speaks of something other than the health of a part.</summary>
    public static bool Is(List<Token> clause, int at)
    {
        var said = clause[at].Said;
        var before = SaidAt(clause, at, -1);
        return (After.TryGetValue(said, out var makers) && makers.Contains(before))
            || (Before.TryGetValue(said, out var followers) && followers.Contains(SaidAt(clause, at, 1)))
            || (OnlyAfter.TryGetValue(said, out var needed) && !needed.Contains(before))
            || clause.Skip(at + 1).Any(token => Conditions.Contains(token.Said));
    }

    /// <summary>The word some places away from that of a token; empty beyond the clause.</summary>
    private static string SaidAt(List<Token> clause, int at, int away)
    {
        var position = clause[at].Position;
        return (away < 0
            ? clause.Take(at).LastOrDefault(token => token.Position < position && token.Said.Length > 0)
            : clause.Skip(at + 1).FirstOrDefault(token => token.Position > position))?.Said ?? "";
    }

    private static FrozenSet<string> Set(string words) => words.Split(' ').ToFrozenSet(StringComparer.Ordinal);
}
