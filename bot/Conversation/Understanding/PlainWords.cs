using System.Collections.Immutable;
using System.Text;
using DxAssistant.Knowledge.Languages;

namespace DxAssistant.Conversation.Understanding;

/// <summary>A short message as bare lower-case words: no punctuation, no apostrophes, no fillers.</summary>
internal static class PlainWords
{
    private const int Longest = 400;

    private static readonly ImmutableHashSet<string> Fillers = ["a", "an", "the", "is", "its", "it", "are", "was",
        "all", "and", "or", "of", "on", "to", "please", "im", "i", "just"];

    /// <summary>The words of a message, fillers included; at most the first 400 characters are read.</summary>
    public static ImmutableArray<string> Of(string text) => [.. Placed(text).Select(placed => placed.Word)];

    /// <summary>The same, each with the place in the text behind it.</summary>
    public static ImmutableArray<(string Word, int End)> Placed(string text)
    {
        var words = ImmutableArray.CreateBuilder<(string, int)>();
        var word = new StringBuilder();
        int end = Math.Min(text.Length, Longest);
        for (int at = 0; at <= end; at++) Take(at < end ? text[at] : ' ', at, word, words);
        return words.ToImmutable();
    }

    /// <summary>The words that carry meaning.</summary>
    public static ImmutableArray<string> Telling(string text) => [.. Of(text).Where(word => !Fillers.Contains(word))];

    /// <summary>
    /// Whether there is nothing in a message that could be said aloud; a code of dashes counts as something.
    /// </summary>
    public static bool IsEmpty(string text) =>
        !text.Any(sign => char.IsLetterOrDigit(sign) || sign is (>= '!' and <= '~'));

    /// <summary>The words with one blank between them.</summary>
    public static string Joined(string text) => string.Join(' ', Of(text));

    private static void Take(char sign, int at, StringBuilder word, ImmutableArray<(string, int)>.Builder words)
    {
        if (char.IsLetterOrDigit(sign)) word.Append(PlainLetters.Of(sign));
        else if (sign is not ('\'' or '’') && word.Length > 0)
        {
            words.Add((word.ToString(), at));
            word.Clear();
        }
    }
}
