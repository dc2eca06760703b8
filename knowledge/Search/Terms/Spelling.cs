using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Knowledge.Search.Terms;

/// <summary>Mends words that the index does not know: glued ones, split ones, misspelled ones.</summary>
internal static class Spelling
{
    private const int ShortestPart = 3;

    public static ImmutableArray<Word> Mend(ImmutableArray<Word> words, Vocabulary vocabulary)
    {
        var mended = ImmutableArray.CreateBuilder<Word>(words.Length);
        for (var i = 0; i < words.Length; i++)
        {
            var (text, starts) = words[i];
            if (text == "not" || vocabulary.Knows(text))
            {
                mended.Add(words[i]);
            }
            else if (i + 1 < words.Length && !words[i + 1].StartsClause && vocabulary.Knows(text + words[i + 1].Text))
            {
                mended.Add(new Word(text + words[i + 1].Text, starts));
                i++;
            }
            else if (Parts(text, vocabulary) is var (left, right))
            {
                mended.Add(new Word(left, starts));
                mended.Add(new Word(right, false));
            }
            else
            {
                mended.Add(new Word(vocabulary.Nearest(text) ?? text, starts));
            }
        }
        return mended.ToImmutable();
    }

    private static (string Left, string Right)? Parts(string word, Vocabulary vocabulary)
    {
        for (var cut = word.Length - ShortestPart; cut >= ShortestPart; cut--)
        {
            if (vocabulary.Knows(word[..cut]) && vocabulary.Knows(word[cut..]))
                return (word[..cut], word[cut..]);
        }
        return null;
    }
}
