using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search;

/// <summary>Learns from the wordings of the pages of one kind which words tell of which page, and which speak against it.</summary>
/// <remarks>
/// Log odds of a page against all others, word by word, as in complement naive Bayes
/// (Rennie and others, Tackling the poor assumptions of naive Bayes, 2003; from memory).
/// </remarks>
internal sealed class WordingModel
{
    /// <summary>What a word counts for in a page that never uses it.</summary>
    private const double Unseen = 0.05;

    /// <summary>A pair of words, or a word as said, against a word of the glossary.</summary>
    private const double SideWeight = 0.5;

    private readonly Dictionary<string, WordUse> uses;
    private readonly ImmutableSortedDictionary<int, double> pages;
    private readonly double all;
    private readonly int wordings;

    /// <param name="phrases">The wordings of the pages to tell apart.</param>
    public WordingModel(ImmutableArray<Phrase> phrases)
    {
        wordings = phrases.Length;
        var features = phrases.Select(phrase => (phrase.Page, Features: Of(phrase.Bag).ToArray())).ToArray();
        uses = features.SelectMany(phrase => phrase.Features).GroupBy(feature => feature.Name, StringComparer.Ordinal)
            .ToDictionary(word => word.Key, word => new WordUse(Rarity(word.Count())), StringComparer.Ordinal);
        var totals = new SortedDictionary<int, double>();
        foreach (var (page, words) in features)
        {
            foreach (var (use, share) in Shares(words))
            {
                use.Add(page, share);
                totals[page] = totals.GetValueOrDefault(page) + share;
            }
        }
        pages = totals.ToImmutableSortedDictionary();
        all = totals.Values.Sum();
    }

    /// <summary>For each page how much the words speak for it, as log odds; only differences mean anything.</summary>
    public Dictionary<int, double> Judge(TermBag said)
    {
        var shares = Shares([.. Of(said)]).ToArray();
        var smoothing = Unseen * uses.Count;
        return pages.ToDictionary(page => page.Key, page => shares.Sum(word => word.Share * Odds(word.Use, page.Key, page.Value, smoothing)));
    }

    private double Odds(WordUse use, int page, double pageTotal, double smoothing)
    {
        var own = use.In(page);
        return Math.Log((own + Unseen) / (pageTotal + smoothing))
            - Math.Log((use.Total - own + Unseen) / (all - pageTotal + smoothing));
    }

    /// <summary>The known words with their shares of the meaning, as the sides of a vector of length 1.</summary>
    private IEnumerable<(WordUse Use, double Share)> Shares((string Name, double Weight)[] words)
    {
        var known = words.Where(word => uses.ContainsKey(word.Name)).Select(word => (Use: uses[word.Name], Value: word.Weight * uses[word.Name].Rarity)).ToArray();
        var length = Math.Sqrt(known.Sum(word => word.Value * word.Value));
        return known.Select(word => (word.Use, length > 0 ? word.Value / length : 0));
    }

    private double Rarity(int having) => Math.Log(1 + ((double)wordings / having));

    private static IEnumerable<(string Name, double Weight)> Of(TermBag bag) =>
        bag.Terms.Select(term => ("term " + term.Key, term.Value))
            .Concat(bag.Plain.Select(stem => ("plain " + stem, SideWeight)))
            .Concat(bag.Pairs.Select(pair => ("pair " + pair, SideWeight)))
            .OrderBy(word => word.Item1, StringComparer.Ordinal);
}
