using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search.Terms;

/// <summary>
/// The terms of a text with their share of the meaning, and the pairs of terms that stand close together.
/// </summary>
/// <param name="Terms">Term to weight, 0 to 1.</param>
/// <param name="Exact">All main terms in order: equal for wordings that differ in nothing but synonyms.</param>
/// <param name="Row">The stems of all words as said, the small ones too, in their order.</param>
internal sealed record TermBag(
    Dictionary<string, double> Terms, HashSet<string> Pairs, string Exact, ImmutableArray<string> Row)
{
    /// <summary>How many words apart two terms still make a pair.</summary>
    private const int PairReach = 5;

    public const char ShingleMark = '>';

    private const double AsideWeight = 0.3;

    /// <summary>The stems of <see cref="Row"/>, each once.</summary>
    public HashSet<string> Plain { get; } = new(Row, StringComparer.Ordinal);

    public bool IsEmpty => Terms.Count == 0;

    public static TermBag Of(ImmutableArray<Token> tokens)
    {
        var terms = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var token in tokens.Where(HasMeaning))
            terms[token.Term] =
                Math.Max(terms.GetValueOrDefault(token.Term), token.Role == TokenRole.Main ? 1 : AsideWeight);
        ImmutableArray<Token> main = [.. tokens.Where(token => token.Role == TokenRole.Main && HasMeaning(token))];
        return new TermBag(terms, PairsOf(main), string.Join(' ', main.Select(token => token.Term)), RowOf(tokens));
    }

    private static ImmutableArray<string> RowOf(ImmutableArray<Token> tokens)
    {
        var said = new List<string>(tokens.Length);
        foreach (var token in tokens)
        {
            if (token.Role is not (TokenRole.Main or TokenRole.Filler))
                continue;
            if (token.Said.Contains(' ', StringComparison.Ordinal))
                said.AddRange(token.Said.Split(' ', StringSplitOptions.RemoveEmptyEntries));
            else if (token.Said.Length > 0)
                said.Add(token.Said);
        }
        return Stemmer.StemAll(said);
    }

    private static bool HasMeaning(Token token) =>
        token.Role is TokenRole.Main or TokenRole.Aside
            && (token.IsNegated || token.Term is not ("good" or "fine" or "ok"));

    private static HashSet<string> PairsOf(ImmutableArray<Token> main)
    {
        var pairs = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < main.Length; i++)
        {
            for (var j = i + 1; j < main.Length && main[j].Position - main[i].Position <= PairReach; j++)
                pairs.Add(Pair(main[i].Term, main[j].Term));
            if (i + 1 < main.Length)
                pairs.Add(main[i].Term + ShingleMark + main[i + 1].Term);
        }
        return pairs;
    }

    private static string Pair(string one, string other) =>
        string.CompareOrdinal(one, other) < 0 ? one + "+" + other : other + "+" + one;
}
