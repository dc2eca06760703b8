using DxAssistant.Knowledge.Search.Requests;
using DxAssistant.Knowledge.Search.Terms;
using Lucene.Net.Index;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>The words of the index, and the nearest of them to a word that is not there.</summary>
internal sealed class Vocabulary
{
    /// <summary>Shorter words are left as they are: too many others are one letter away.</summary>
    private const int ShortestCorrected = 4;

    /// <summary>A word at least this long may have two letters wrong.</summary>
    private const int LongWord = 7;

    /// <summary>Most that two words may differ, in <see cref="EditCost"/>, for each letter of the longer.</summary>
    private const double MostCostPerLetter = 0.2;

    private readonly Thesaurus thesaurus;
    private readonly Dictionary<string, int> pagesWith = new(StringComparer.Ordinal);
    // The first letter of a word is seldom wrong.
    private readonly ILookup<(char First, int Length), string> byShape;

    public Vocabulary(IndexReader reader, Thesaurus thesaurus)
    {
        this.thesaurus = thesaurus;
        var each = MultiFields.GetTerms(reader, Fields.Words)?.GetEnumerator();
        while (each is not null && each.MoveNext())
            pagesWith.Add(each.Term.Utf8ToString(), each.DocFreq);
        byShape = pagesWith.Keys.ToLookup(word => (word[0], word.Length));
    }

    public bool Knows(string word) =>
        pagesWith.ContainsKey(word) || thesaurus.KnowsWord(word) || Fillers.Contains(word)
            || EverydayWords.Contains(word)
        || UnsafeRules.Words.Contains(word) || States.Has(word);

    /// <summary>The nearest known word, or null if none is near enough.</summary>
    public string? Nearest(string word)
    {
        if (word.Length < ShortestCorrected || word.Any(char.IsDigit))
            return null;
        var edits = word.Length >= LongWord ? 2 : 1;
        string? best = null;
        var least = MostCostPerLetter * word.Length;
        foreach (var candidate in Near(word, edits))
        {
            var cost = EditCost.Between(word, candidate) - Frequency(candidate);
            if (cost < least || (cost == least && string.CompareOrdinal(candidate, best) < 0))
                (best, least) = (candidate, cost);
        }
        return best;
    }

    /// <summary>
    /// Words that so many letters put in, left out, replaced or swapped with the next make of a word.
    /// </summary>
    private IEnumerable<string> Near(string word, int edits) =>
        Enumerable.Range(word.Length - edits, (2 * edits) + 1)
            .SelectMany(length => byShape[(word[0], length)])
            .Where(candidate => EditDistance.IsWithin(word, candidate, edits));

    /// <summary>A small bonus for words that many pages use.</summary>
    private double Frequency(string word) => 0.1 * Math.Min(1, pagesWith[word] / 20.0);
}
