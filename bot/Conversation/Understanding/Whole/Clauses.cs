using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace DxAssistant.Conversation.Understanding.Whole;

/// <summary>Cuts a message into the pieces that each tell one thing.</summary>
internal static partial class Clauses
{
    public static ImmutableArray<string> Cut(string text) =>
        [.. Between().Split(text).Select(piece => piece.Trim()).Where(piece => !PlainWords.IsEmpty(piece) || piece.Contains('-'))];

    // A stop inside a number or a word is none; a stroke parts codes, not units.
    [GeneratedRegex(
        @"[;!?\n\r…]+|[,.](?=\s|$)|(?<=[^\d\s]),|(?<=[A-Za-z]\d)\s*[/&+]\s*(?=[A-Za-z]{1,2}\d)|\s[-–—]\s|\s(?:and|but|then|plus|also|while|although|&|\+)\s",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Between();
}
