using System.Collections.Frozen;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Clauses;

/// <summary>
/// A part that was put in place of another and changed nothing: "tried a different indoor board, no change".
/// </summary>
internal static class Substitutes
{
    private static readonly FrozenSet<string> Trying =
        new[] { "tried", "put", "fitted", "installed", "used", "plugged", "swapped", "changed", "try", "threw",
            "popped", "stuck" }.ToFrozenSet(StringComparer.Ordinal);

    private static readonly FrozenSet<string> Other =
        new[] { "different", "another", "other", "spare", "loan", "borrowed", "second", "test", "known", "new",
            "replacement" }.ToFrozenSet(StringComparer.Ordinal);

    private static readonly FrozenSet<string> Still =
        new[] { "still", "same", "change", "difference", "better", "joy", "luck", "avail", "odds", "nothing",
            "identical" }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>How many clauses on it may be said that nothing changed.</summary>
    private const int Soon = 2;

    /// <summary>The tokens of the part, if the clauses after it say that all stayed as it was; else none.</summary>
    public static List<Token> In(List<Token> clause, IEnumerable<List<Token>> after)
    {
        var trying = clause.FindIndex(token => Trying.Contains(token.Said));
        var other = trying < 0 ? -1 : clause.FindIndex(trying, token => Other.Contains(token.Said));
        return other >= 0 && after.Take(Soon).Any(SaysSo)
            ? [.. clause.Skip(other + 1)
                .Where(token => token.Role is TokenRole.Main or TokenRole.Aside && !States.IsWell(token.Term))]
            : [];
    }

    /// <summary>"no odds", "no difference".</summary>
    public static bool IsNoChange(Token token) => token.IsNegated && Still.Contains(token.Said);

    private static bool SaysSo(List<Token> clause) =>
        clause.Take(4).Any(token => Still.Contains(token.Said))
            && (clause.Take(3)
                .Any(token => token.Said is "still" or "same" or "identical" or "not" or "nothing" || token.IsNegated));
}
