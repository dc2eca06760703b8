using System.Collections.Frozen;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Clauses;

/// <summary>What was believed and was not so: "I blamed the pump, turned out the hose was kinked".</summary>
internal static class Beliefs
{
    private static readonly FrozenSet<string> Believing = new[]
    {
        "thought", "swore", "suspected", "assumed", "figured", "reckoned", "blamed", "believed", "condemn", "condemned", "convinced",
        "diagnosed", "guessed", "expected", "insisted", "claimed",
    }.ToFrozenSet(StringComparer.Ordinal);

    private static readonly FrozenSet<string> Turns = new[]
    {
        "but", "turns", "turned", "glad", "actually", "however", "yet", "instead", "nope", "wrong", "until",
    }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>The tokens of a clause that tell of something believed, if the next clause turns from it; else none.</summary>
    public static List<Token> MistakenIn(List<Token> clause, List<Token> next)
    {
        var at = clause.FindIndex(token => Believing.Contains(token.Said));
        return at >= 0 && next.Take(2).Any(token => Turns.Contains(token.Said))
            ? [.. clause.Skip(at + 1).Where(token => token.Position > clause[at].Position && token.Role is TokenRole.Main or TokenRole.Aside or TokenRole.RuledOut)]
            : [];
    }
}
