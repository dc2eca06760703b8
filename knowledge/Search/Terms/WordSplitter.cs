using System.Collections.Immutable;
using System.Text;
using Lucene.Net.Analysis.Miscellaneous;

namespace DxAssistant.Knowledge.Search.Terms;

/// <summary>Cuts a text into words and notes where punctuation stood.</summary>
internal static class WordSplitter
{
    /// <summary>Longest text looked at, in characters; the rest is left out.</summary>
    public const int LongestText = 4_000;

    public static ImmutableArray<Word> Split(string text)
    {
        var folded = Fold(text.Length > LongestText ? text[..LongestText] : text);
        var words = ImmutableArray.CreateBuilder<Word>();
        var word = new StringBuilder();
        var breaks = true;
        for (var i = 0; i <= folded.Length; i++)
        {
            var c = i < folded.Length ? folded[i] : ' ';
            if (IsPartOfWord(folded, i, c))
            {
                word.Append(c);
                continue;
            }
            breaks = Add(words, word, breaks) || EndsClause(c);
        }
        return HeatPumps.Named(words.ToImmutable());
    }

    private static bool Add(ImmutableArray<Word>.Builder words, StringBuilder word, bool breaks)
    {
        if (word.Length == 0)
            return breaks;
        foreach (var part in WordForms.Of(word.ToString().Trim('\'')))
        {
            words.Add(new Word(part, breaks));
            breaks = false;
        }
        word.Clear();
        return breaks;
    }

    private static bool IsPartOfWord(string text, int at, char c) =>
        char.IsLetterOrDigit(c) || c == '\''
        || (c == '.' && at > 0 && at + 1 < text.Length && char.IsDigit(text[at - 1]) && char.IsDigit(text[at + 1]));

    private static bool EndsClause(char c) =>
        c is '.' or ',' or ';' or ':' or '!' or '?' or '\n' or '(' or ')' or '–' or '—';

    private static string Fold(string text)
    {
        var plain = WithLetters(text).Replace('’', '\'').Replace('‘', '\'').Replace('`', '\'').Replace("&", " and ")
            .Replace("+", " and ")
            .ToLowerInvariant().Replace(" w/o", " without", StringComparison.Ordinal)
            .Replace(" w/", " with ", StringComparison.Ordinal).ToCharArray();
        var output = new char[plain.Length * 4];
        var length = ASCIIFoldingFilter.FoldToASCII(plain, 0, output, 0, plain.Length);
        return new string(output, 0, length);
    }

    /// <summary>Signs that stand for letters within a word, as in "byp@ss".</summary>
    private static string WithLetters(string text)
    {
        if (text.AsSpan().IndexOfAny('@', '$') < 0)
            return text;
        var letters = text.ToCharArray();
        for (var at = 1; at + 1 < letters.Length; at++)
        {
            if (letters[at] is '@' or '$' && char.IsLetter(letters[at - 1]) && char.IsLetter(letters[at + 1]))
                letters[at] = letters[at] == '@' ? 'a' : 's';
        }
        return new string(letters);
    }
}
