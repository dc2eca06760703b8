using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Glyphs.Finding;

/// <summary>Reads one piece of a code: a letter, digits, dashes or a typed code, with what people say about
/// them.</summary>
internal static class AtomReader
{
    private const int MostDigits = 3;

    /// <summary>The piece that begins at a token; null if none does.</summary>
    public static GlyphAtom? At(TokenList tokens, int at)
    {
        Token token = tokens[at];
        return token.Kind switch
        {
            TokenKind.Symbol => token.Is('-') ? new GlyphAtom("-", at + 1, GlyphAtomKind.Dash, true) : null,
            TokenKind.Number => token.IsWhole && token.Length <= MostDigits && !token.Smudged
                ? new GlyphAtom(token.Text, at + 1, GlyphAtomKind.Digits, false) : null,
            TokenKind.Code => Typed(token, at),
            TokenKind.Word => Dashes(tokens, at) ?? Doubled(tokens, at) ?? Cased(tokens, at)
                ?? Digits(tokens, at) ?? Letter(token, at) ?? Letters(tokens, at),
            _ => null,
        };
    }

    /// <summary>The zero that is said "oh" inside a code.</summary>
    public static GlyphAtom? Zero(TokenList tokens, int at) => tokens[at].Lower is "oh" or "o" or "owe"
        ? new GlyphAtom("0", at + 1, GlyphAtomKind.Digits, true) : null;

    private static GlyphAtom? Typed(Token token, int at)
    {
        string plain = GlyphShapes.Plain(token.Text);
        bool marked = token.Text.Contains('/', StringComparison.Ordinal) || token.Text.Length - plain.Length > 1
            || (token.Text.IndexOfAny(['.', '_']) is >= 0 and not 1);
        return plain.Length is >= 2 and <= 4 && !marked ? new GlyphAtom(plain, at + 1, GlyphAtomKind.Typed, true)
            : null;
    }

    private static GlyphAtom? Dashes(TokenList tokens, int at)
    {
        string word = tokens[at].Lower;
        if (word is "dash" or "hyphen" or "minus" or "dashes")
        {
            return new GlyphAtom(word == "dashes" ? "--" : "-", at + 1, GlyphAtomKind.Dash, true);
        }
        int count = word switch { "two" or "double" or "couple" => 2, "three" or "triple" => 3, "four" => 4, _ => 0 };
        return count > 0 && tokens[at + 1].Lower is "dashes" or "hyphens" or "dash"
            ? new GlyphAtom(new string('-', count), at + 2, GlyphAtomKind.Dash, true) : null;
    }

    private static GlyphAtom? Doubled(TokenList tokens, int at)
    {
        int count = tokens[at].Lower switch { "double" => 2, "triple" => 3, _ => 0 };
        return count > 0 && (Digits(tokens, at + 1) ?? AnyLetter(tokens[at + 1], at + 1)) is { Text.Length: 1 } one
            ? one with { Text = new string(one.Text[0], count), Plain = tokens[at + 1].Length > 1
                || one.Kind == GlyphAtomKind.Letter } : null;
    }

    // "capital h", "little b", "lower case letter b", "number zero"
    private static GlyphAtom? Cased(TokenList tokens, int at)
    {
        bool? upper = tokens[at].Lower switch
        {
            "capital" or "cap" or "big" or "upper" or "uppercase" => true,
            "little" or "small" or "lower" or "lowercase" => false,
            _ => null,
        };
        int next = upper is null ? at : at + (tokens[at + 1].Is("case") ? 2 : 1);
        bool letter = tokens[next].Lower is "letter" or "character";
        bool number = tokens[next].Lower is "number" or "numeral" or "digit" or "figure";
        next += letter || number ? 1 : 0;
        if (next == at)
        {
            return null;
        }
        GlyphAtom? atom = number ? Digits(tokens, next) ?? Zero(tokens, next) : AnyLetter(tokens[next], next);
        return atom is null ? null
            : atom with { Plain = true, Text = upper is false ? atom.Text.ToLowerInvariant() : upper is true
            ? atom.Text.ToUpperInvariant() : atom.Text };
    }

    private static GlyphAtom? AnyLetter(Token token, int at) =>
        token.IsWord && (token.Length == 1 ? token.Text[0] : SpokenCharacters.RiskyName(token.Lower)) is { } letter
            && letter < 128
            ? new GlyphAtom(letter.ToString(), at + 1, GlyphAtomKind.Letter, true) : token.IsWord ? Letter(token, at)
                : null;

    private static GlyphAtom? Letter(Token token, int at)
    {
        char? letter = token.Length == 1 ? token.Text[0] : token.Length <= 3 && token.Text != token.Lower ? null
            : SpokenCharacters.Radio(token.Lower) ?? SpokenCharacters.Name(token.Lower)
                ?? SpokenCharacters.RiskyName(token.Lower);
        bool plain = token.Length == 1 ? token.Text is not ("a" or "i" or "I" or "A")
            && SegmentTable.TryGet(char.ToUpperInvariant(token.Text[0]), out _)
            : SpokenCharacters.RiskyName(token.Lower) is null;
        return letter is { } c && char.IsAsciiLetter(c)
            ? new GlyphAtom(c.ToString(), at + 1, GlyphAtomKind.Letter, plain) : null;
    }

    private static GlyphAtom? Digits(TokenList tokens, int at)
    {
        if (tokens[at].IsWhole && tokens[at].Length <= MostDigits)
        {
            return new GlyphAtom(tokens[at].Text, at + 1, GlyphAtomKind.Digits, false);
        }
        if (SpokenCharacters.Small(tokens[at].Lower) is { } small)
        {
            return new GlyphAtom(small, at + 1, GlyphAtomKind.Digits, false);
        }
        if (SpokenCharacters.Ten(tokens[at].Lower) is not { } ten)
        {
            return null;
        }
        int ones = at + (tokens[at + 1].Is('-') ? 2 : 1);
        return SpokenCharacters.Small(tokens[ones].Lower) is { Length: 1 } one && one != "0"
            ? new GlyphAtom(ten + one, ones + 1, GlyphAtomKind.Digits, false)
            : new GlyphAtom(ten + "0", at + 1, GlyphAtomKind.Digits, false);
    }

    // ES, PO, dF: a code in letters, if no everyday word.
    private static GlyphAtom? Letters(TokenList tokens, int at)
    {
        Token token = tokens[at];
        bool letters = token.Length is 2 or 3
            && token.Text.All(c => char.IsAsciiLetter(c) && SegmentTable.TryGet(c, out _));
        bool called = tokens[at - 1].Lower is "code" or "error" && token.Text.All(char.IsUpper);
        return letters && (called || !EverydayWords.Has(token.Lower))
            ? new GlyphAtom(token.Text, at + 1, GlyphAtomKind.Typed, false) : null;
    }
}
