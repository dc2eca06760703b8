using System.Text.RegularExpressions;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Glyphs;

/// <summary>Codes typed on a keyboard of another alphabet: <c>Е7</c> with a Cyrillic letter.</summary>
internal static class LatinCodes
{
    private static readonly Regex Code =
        new(@"(?<!\w)(?=\w*[0-9])(?=\w*\p{L})\w{2,4}(?!\w)", RegexOptions.CultureInvariant);

    /// <summary>
    /// The text with such letters as Latin ones where they stand with a digit in one word; as long as it was.
    /// </summary>
    public static string In(string text) => text.All(char.IsAscii) ? text : Code.Replace(text, code =>
        OddCharacter.Plain(code.Value) is var plain && plain.Length == code.Length && plain.All(char.IsAscii)
            ? plain
            : code.Value);
}
