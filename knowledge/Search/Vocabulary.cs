using Lucene.Net.Index;
using Lucene.Net.Search;
using Lucene.Net.Util;

namespace DxAssistant.Knowledge.Search;

/// <summary>The words of the index, and the nearest of them to a word that is not there.</summary>
internal sealed class Vocabulary(IndexReader reader, Thesaurus thesaurus)
{
    /// <summary>Shorter words are left as they are: too many others are one letter away.</summary>
    private const int ShortestCorrected = 4;

    /// <summary>A word at least this long may have two letters wrong.</summary>
    private const int LongWord = 7;

    /// <summary>Most that two words may differ, in <see cref="EditCost"/>, for each letter of the longer.</summary>
    private const double MostCostPerLetter = 0.2;

    private readonly Terms? terms = MultiFields.GetTerms(reader, Fields.Words);

    public bool Knows(string word) =>
        thesaurus.KnowsWord(word) || Fillers.Contains(word) || EverydayWords.Contains(word)
        || UnsafeRules.Words.Contains(word)         || reader.DocFreq(new Term(Fields.Words, word)) > 0;

    /// <summary>The nearest known word, or null if none is near enough.</summary>
    public string? Nearest(string word)
    {
        if (word.Length < ShortestCorrected || terms is null || word.Any(char.IsDigit))
            return null;
        var edits = word.Length >= LongWord ? 2 : 1;
        var near = new FuzzyTermsEnum(terms, new AttributeSource(), new Term(Fields.Words, word), edits, 1, true);
        string? best = null;
        var least = MostCostPerLetter * word.Length;
        while (near.MoveNext())
        {
            var candidate = near.Term.Utf8ToString();
            var cost = EditCost.Between(word, candidate) - Frequency(candidate);
            if (cost < least || (cost == least && string.CompareOrdinal(candidate, best) < 0))
                (best, least) = (candidate, cost);
        }
        return best;
    }

    /// <summary>A small bonus for words that many pages use.</summary>
    private double Frequency(string word) => 0.1 * Math.Min(1, reader.DocFreq(new Term(Fields.Words, word)) / 20.0);
}
