using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Glyphs.Finding;

/// <summary>Joins pieces to a code: "e five", "capital h little b", "e one two", "5 u", "dash dash".</summary>
internal static class RunReader
{
    private const int LongestCode = 4;

    private static readonly string[] CountedNouns =
        ["times", "time", "x", "blinks", "blink", "flashes", "flash", "minutes", "minute", "min", "seconds", "sec",
            "hours", "days", "beeps", "lights", "volts", "amps", "ohms", "psi", "degrees"];

    /// <summary>The code that begins at a token; null if none does.</summary>
    public static CodeRun? At(TokenList tokens, int first) => AtomReader.At(tokens, first) switch
    {
        null => null,
        { Kind: GlyphAtomKind.Dash } => Dashes(tokens, first),
        { Kind: GlyphAtomKind.Typed } typed when typed.Text.All(char.IsAsciiLetter)
            && AtomReader.At(tokens, typed.End) is { Kind: GlyphAtomKind.Digits } => Joined(tokens, first, typed),
        { Kind: GlyphAtomKind.Typed } typed =>
            new CodeRun(first, typed.End, typed.Text, typed.Plain && HasLetterThenDigit(typed.Text), true),
        { } atom => Joined(tokens, first, atom),
    };

    private static CodeRun? Dashes(TokenList tokens, int first)
    {
        int at = first;
        int count = 0;
        while (count < LongestCode && AtomReader.At(tokens, at) is { Kind: GlyphAtomKind.Dash } dash)
        {
            count += dash.Text.Length;
            at = dash.End;
        }
        return count >= 2 ? new CodeRun(first, at, new string('-', count), false,
            tokens[first].Kind == TokenKind.Symbol) : null;
    }

    private static CodeRun? Joined(TokenList tokens, int first, GlyphAtom atom)
    {
        string text = atom.Text;
        int end = atom.End;
        bool plain = atom.Kind == GlyphAtomKind.Letter && atom.Plain;
        GlyphAtom last = atom;
        while (Next(tokens, end, last) is { } next && text.Length + next.Text.Length <= LongestCode)
        {
            text += next.Text;
            end = next.End;
            plain &= next.Kind == GlyphAtomKind.Digits || next.Plain;
            last = next;
        }
        bool shown = text.All(c => !GlyphShapes.ShapesOf(c).IsEmpty);
        return shown ? new CodeRun(first, end, text, plain && HasLetterThenDigit(text), false) : null;
    }

    // A dash between the pieces is skipped: E-5, "e dash five".
    private static GlyphAtom? Next(TokenList tokens, int end, GlyphAtom last)
    {
        int at = (tokens[end].Is('-') && tokens[end].Glued == tokens[end + 1].Glued)
            || tokens[end].Lower is "dash" or "hyphen" or "minus" ? end + 1 : end;
        GlyphAtom? next = AtomReader.Zero(tokens, at) is { } zero
            && last.Kind is GlyphAtomKind.Letter or GlyphAtomKind.Digits ? zero : AtomReader.At(tokens, at);
        bool joins = next?.Kind is GlyphAtomKind.Letter or GlyphAtomKind.Digits;
        bool counted = next?.Kind == GlyphAtomKind.Digits && last.Kind == GlyphAtomKind.Digits
            && CountedNouns.Contains(tokens[next.End].Lower);
        bool twoNumbers = next?.Kind == GlyphAtomKind.Digits && last.Kind == GlyphAtomKind.Digits
            && tokens[at].IsNumber && tokens[at - 1].IsNumber
            && !(tokens[at].Length == 1 && tokens[at - 1].Length == 1
                && (at + 1 >= tokens.Count || tokens[at + 1].IsOneOf(".,!?\n)")));
        bool letterAfter = next?.Kind == GlyphAtomKind.Letter && last.Kind == GlyphAtomKind.Digits
            && !(tokens[at].Glued || tokens[at].Length == 1);
        return joins && !counted && !twoNumbers && !letterAfter ? next : null;
    }

    private static bool HasLetterThenDigit(string text) => char.IsAsciiLetter(text[0]) && text.Any(char.IsAsciiDigit);
}
