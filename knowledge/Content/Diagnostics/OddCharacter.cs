using System.Collections.Frozen;
using System.Globalization;

namespace DxAssistant.Knowledge.Content;

/// <summary>
/// Characters that look like others, or like nothing at all, and so make two words of what reads as one.
/// </summary>
/// <remarks>
/// Source: Unicode, confusables.txt, the rows of single Cyrillic and Greek letters that look like Latin ones.
/// </remarks>
internal static class OddCharacter
{
    private static readonly FrozenDictionary<char, char> Latin = Pairs(
        "АAВBЕEЅSІIЈJКKМMНHОOРPСCТTХXУYаaеeоoрpсcуyхxіiјjѕsԁdһhΑAΒBΕEΖZΗHΙIΚKΜMΝNΟOΡPΤTΥYΧXοoαaνvιiρp");

    /// <summary>The word as it reads: letters that only look Latin are Latin, unseen characters are gone.</summary>
    public static string Plain(string word) => word.All(c => !IsOdd(c)) ? word : string.Concat(word
        .Where(c => !IsUnseen(c)).Select(c => c == '\u00A0' ? ' ' : Latin.GetValueOrDefault(c, c)));

    /// <summary>True when the word has such a character.</summary>
    public static bool IsIn(string word) => word.Any(IsOdd);

    /// <summary>"the 2nd letter is a Cyrillic о", or null when there is no such character.</summary>
    public static string? In(string word)
    {
        int at = word.ToList().FindIndex(IsOdd);
        return at < 0 ? null : $"the {Ordinal(at + 1)} {Named(word[at])}";
    }

    /// <summary>The remedy, behind it which letter is odd.</summary>
    public static string Said(string help, string word) => In(word) is { } odd ? $"{help}; {odd}" : help;

    private static bool IsOdd(char c) => c >= '\u00A0' && (Latin.ContainsKey(c) || c == '\u00A0' || IsUnseen(c));

    private static bool IsUnseen(char c) => CharUnicodeInfo.GetUnicodeCategory(c) == UnicodeCategory.Format;

    private static string Named(char c) => c == '\u00A0' ? "character is a non-breaking space (U+00A0)"
        : IsUnseen(c) ? $"character, U+{(int)c:X4}, cannot be seen"
        : $"letter is a {(c < '\u0400' ? "Greek" : "Cyrillic")} {c}";

    private static string Ordinal(int number) =>
        string.Create(CultureInfo.InvariantCulture, $"{number}{(number % 100 / 10, number % 10) switch
        {
            (not 1, 1) => "st",
            (not 1, 2) => "nd",
            (not 1, 3) => "rd",
            _ => "th",
        }}");

    private static FrozenDictionary<char, char> Pairs(string pairs) =>
        pairs.Chunk(2).ToFrozenDictionary(pair => pair[0], pair => pair[1]);
}
