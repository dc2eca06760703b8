using System.Collections.Immutable;
using System.Text;
using DxAssistant.Knowledge.Languages;

namespace DxAssistant.Conversation.Understanding;

/// <summary>A short message as bare lower-case words: no punctuation, no apostrophes, no fillers.</summary>
internal static class PlainWords
{
    private static readonly ImmutableHashSet<string> Fillers = ["a", "an", "the", "is", "its", "it", "are", "was", "all", "and", "or", "of", "on", "to", "please", "im", "i", "just"];

    /// <summary>The words of a message, fillers included; at most the first 400 characters are read.</summary>
    public static ImmutableArray<string> Of(string text)
    {
        var words = ImmutableArray.CreateBuilder<string>();
        var word = new StringBuilder();
        foreach (char sign in text.Length > 400 ? text[..400] : text) Take(sign, word, words);
        Take(' ', word, words);
        return words.ToImmutable();
    }

    /// <summary>The words that carry meaning.</summary>
    public static ImmutableArray<string> Telling(string text) => [.. Of(text).Where(word => !Fillers.Contains(word))];

    /// <summary>Whether there is nothing in a message that could be said aloud; a code of dashes counts as something.</summary>
    public static bool IsEmpty(string text) => !text.Any(sign => char.IsLetterOrDigit(sign) || sign is (>= '!' and <= '~'));

    /// <summary>The words with one blank between them.</summary>
    public static string Joined(string text) => string.Join(' ', Of(text));

    private static void Take(char sign, StringBuilder word, ImmutableArray<string>.Builder words)
    {
        if (char.IsLetterOrDigit(sign)) word.Append(PlainLetters.Of(sign));
        else if (sign is not ('\'' or '’') && word.Length > 0)
        {
            words.Add(word.ToString());
            word.Clear();
        }
    }
}
