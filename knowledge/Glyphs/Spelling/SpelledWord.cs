using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace DxAssistant.Knowledge.Glyphs.Spelling;

/// <summary>A word, a number or a sign of a message.</summary>
/// <param name="Glued">Nothing stands between it and what is before.</param>
internal sealed partial record SpelledWord(string Text, string Lower, bool Glued)
{
    public static SpelledWord None { get; } = new("", "", false);

    public bool IsNumber => Text.Length > 0 && Text.All(char.IsAsciiDigit);

    public bool IsLetter => Text.Length == 1 && char.IsAsciiLetter(Text[0]);

    /// <summary>
    /// Two or three letters in capitals, or a small letter beside a capital: typed as a display shows them.
    /// </summary>
    public bool IsTyped => Text.Length is 2 or 3 && Text.All(char.IsAsciiLetter) && Text.Skip(1).Any(char.IsUpper);

    /// <summary>Cuts a message: E5 is a letter and a number without a blank between them.</summary>
    public static ImmutableArray<SpelledWord> Cut(string text)
    {
        int end = -1;
        var words = ImmutableArray.CreateBuilder<SpelledWord>();
        foreach (Match match in Pieces().Matches(text))
        {
            words.Add(
                new SpelledWord(match.Value, match.Value.ToLowerInvariant().Replace('’', '\''), match.Index == end));
            end = match.Index + match.Length;
        }

        return words.ToImmutable();
    }

    [GeneratedRegex(@"\p{L}+(?:['’]\p{L}+)*|\d+|[^\s]", RegexOptions.CultureInvariant)]
    private static partial Regex Pieces();
}
