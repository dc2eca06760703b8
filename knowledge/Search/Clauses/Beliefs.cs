using System.Collections.Frozen;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Clauses;

/// <summary>What was believed and was not so: "I blamed the pump, turned out the hose was kinked".</summary>
internal static class Beliefs
{
    private static readonly FrozenSet<string> Believing = new[]
    {
        "thought", "swore", "suspected", "assumed", "figured", "reckoned", "blamed", "believed", "condemn", "condemned",
        "convinced",
        "diagnosed", "guessed", "expected", "insisted", "claimed",
    }.ToFrozenSet(StringComparer.Ordinal);

    private static readonly FrozenSet<string> Turns = new[]
    {
        "but", "turns", "turned", "glad", "actually", "however", "yet", "instead", "nope", "wrong", "until",
    }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>How many clauses on the message may turn.</summary>
    private const int Soon = 2;

    /// <summary>
    /// The tokens of a clause that tell of something believed, if one of the next clauses turns from it; else none.
    /// </summary>
    /// <param name="after">The clauses after it.</param>
    public static List<Token> MistakenIn(List<Token> clause, IEnumerable<List<Token>> after)
    {
        var at = clause.FindIndex(token => Believing.Contains(token.Said));
        return at >= 0 && after.Take(Soon).Any(TurnsAway)
            ? [.. clause.Skip(at + 1)
                .Where(token => token.Position > clause[at].Position
                    && token.Role is TokenRole.Main or TokenRole.Aside or TokenRole.RuledOut)]
            : [];
    }

    /// <summary>"but …", "turned out …", and "it is the …", which names something else.</summary>
    private static bool TurnsAway(List<Token> next) =>
        next.Take(2).Any(token => Turns.Contains(token.Said))
            || next.Take(3).Select(token => token.Said).ToArray() is ["it", "is" or "was", "the"] or ["its", "the", ..];
}
