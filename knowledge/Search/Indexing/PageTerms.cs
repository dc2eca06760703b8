using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>What all wordings of one page and its body say together.</summary>
/// <param name="Terms">Each term once.</param>
/// <param name="Pairs">Each pair of the wordings once.</param>
/// <param name="Plain">The stems as said: once for each wording that has them, and for the body.</param>
/// <param name="Words">Each word as written once, but the shortest.</param>
internal sealed record PageTerms(HashSet<string> Terms, HashSet<string> Pairs, ImmutableArray<string> Plain,
    HashSet<string> Words)
{
    private const int ShortestWord = 3;

    public static PageTerms Of(IReadOnlyCollection<Phrase> wordings, ImmutableArray<Word> body, TradeAnalyzer analyzer)
    {
        var bag = TermBag.Of(analyzer.Analyze(body));
        return new(
            Each(wordings.SelectMany(wording => wording.Bag.Terms.Keys).Concat(bag.Terms.Keys)),
            Each(wordings.SelectMany(wording => wording.Bag.Pairs)),
            [.. wordings.SelectMany(wording => wording.Bag.Plain), .. bag.Plain],
            Each(wordings.SelectMany(wording => wording.Words).Concat(body).Select(word => word.Text)
                .Where(word => word.Length >= ShortestWord)));
    }

    private static HashSet<string> Each(IEnumerable<string> terms) => new(terms, StringComparer.Ordinal);
}
