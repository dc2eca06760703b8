using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using DxAssistant.Knowledge.Glyphs.Finding;
using DxAssistant.Knowledge.Glyphs.Spelling;
using DxAssistant.Knowledge.Readings;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Glyphs;

/// <summary>Understands what a display shows, as technicians type and say it.</summary>
public static class GlyphReader
{
    private const int LongestCode = 4;

    /// <summary>Reads a message that is about a code; an empty reading if no code can be made of it. Never
    /// throws.</summary>
    public static GlyphReading Read(string text) => Heard(text, guess: true) ?? new GlyphReading("", []);

    /// <summary>
    /// Reads a message that may be about something else: what is plainly a code, spelled in any way, and no guesses.
    /// </summary>
    public static bool TryRead(string text, [NotNullWhen(true)] out GlyphReading? reading) =>
        (reading = Heard(text, guess: false)) is not null;

    /// <summary>Reads a message that is nothing but one code, spelled in any way.</summary>
    public static bool TrySpell(string written, [NotNullWhen(true)] out GlyphReading? reading)
    {
        string text = LatinCodes.In(written);
        TokenList tokens = Lexer.Cut(text);
        SpelledRun? spelled = Speller.Read(text, out bool covered);
        reading = covered && spelled is { Alone: true } && IsPlain(spelled) && BlinkFinder.In(tokens, null) is null
            ? Of(spelled.Text, Steadiness.In(tokens), null) : null;
        return reading is not null;
    }

    private static GlyphReading? Heard(string written, bool guess)
    {
        string text = LatinCodes.In(written);
        string described = DescribedShapes.Resolve(text);
        // What was resolved already needs no turning.
        return described != text || !TurnedCode.IsMeant(text)
            || Upright(text, guess) is not { Canonical.Length: > 1 } seen ? Upright(described, guess)
            : Of(TurnedCode.Turn(seen.Canonical), seen.Flashing, null);
    }

    private static GlyphReading? Upright(string message, bool guess)
    {
        string text = LampForms.Mend(message);
        TokenList tokens = Lexer.Cut(text);
        if (LampsTogether.In(tokens) is { } flashing) return Of("", flashing, null);
        SpelledRun? spelled = Speller.Read(text, out bool covered);
        bool number = spelled?.Text.All(char.IsAsciiDigit) != false;
        if (number && LampForms.TellsACount(text) && BlinkFinder.In(tokens, null) is { } counted)
            return Of("", null, counted);
        if (covered && spelled is not null && (guess || IsPlain(spelled))
            && !(number && BlinkFinder.In(tokens, null) is not null) && !FullDisplay.Says(text))
            return Of(spelled.Text, Steadiness.In(tokens), null);
        string mended = guess ? SpokenForms.Mend(text) : text;
        if (TryFind(mended, out GlyphReading? found) || TryFind(text, out found)) return found;
        return guess ? Guessed(text, mended, spelled, tokens) : null;
    }

    // Of dashes two or more; of other signs two, one of them no everyday word.
    private static bool IsPlain(SpelledRun spelled) => spelled.Text.Length > 1 && spelled.Sure;

    private static GlyphReading? Guessed(string text, string mended, SpelledRun? spelled, TokenList tokens)
    {
        if (FullDisplay.Says(text)) return Of("88", Steadiness.In(tokens), null);
        if (spelled is not null && IsPlain(spelled)) return Of(spelled.Text, Steadiness.In(tokens), null);
        string plain = GlyphShapes.Plain(mended);
        return plain.Length is > 0 and <= LongestCode && mended.Length <= 2 * LongestCode && plain.All(c => c < 128)
            ? Of(plain, null, null)
            : null;
    }

    /// <summary>Finds a code or a blink pattern in a sentence.</summary>
    public static bool TryFind(string text, [NotNullWhen(true)] out GlyphReading? reading) =>
        TryFind(text, out reading, out _);

    /// <summary>Finds a code or a blink pattern in a sentence, and where it stands.</summary>
    public static bool TryFind(string text, [NotNullWhen(true)] out GlyphReading? reading, out TextSpan span)
    {
        TokenList tokens = Lexer.Cut(LatinCodes.In(text));
        CodeRun? code = AllLit.In(tokens) ?? CodeFinder.In(tokens);
        Blinks? blinks = BlinkFinder.In(tokens, code);
        span = code is not null ? tokens.Span(code.First, code.End) : blinks is not null
            ? tokens.Span(blinks.First, blinks.End) : default;
        reading = code is not null ? Of(code.Text, Steadiness.In(tokens), blinks)
            : blinks is not null ? Of("", null, blinks)
            : null;
        return reading is not null;
    }

    /// <summary>The codes of a series that can be what was seen, the best fit first, then in ordinal order.</summary>
    public static ImmutableArray<FittingCode> Resolve(GlyphReading reading, IEnumerable<string> displayCodes) =>
        Resolve(reading.Canonical, displayCodes);

    /// <summary>The same for the canonical form of what was seen.</summary>
    public static ImmutableArray<FittingCode> Resolve(string canonical, IEnumerable<string> displayCodes) =>
        [.. displayCodes.Distinct(StringComparer.Ordinal)
            .Select(code => (code, fit: Fit(canonical, code)))
            .Where(pair => pair.fit is not null)
            .Select(pair => new FittingCode(pair.code, pair.fit!.Value))
            .OrderBy(fitting => fitting.Fit).ThenBy(fitting => fitting.Code, StringComparer.Ordinal)];

    private static GlyphFit? Fit(string seen, string code)
    {
        if (string.Equals(seen, GlyphShapes.Plain(code), StringComparison.OrdinalIgnoreCase) && seen.Length > 0)
        {
            return GlyphFit.Exact;
        }
        return GlyphShapes.Distance(seen, code) switch
        {
            0 => GlyphFit.SameShape,
            1 => GlyphFit.OneSegment,
            2 when GlyphShapes.Darkened(seen, code) == 2 && DigitsThatDiffer(seen, code) == 1 => GlyphFit.BrokenDigit,
            null when LeadingZeros.Dropped(seen) == LeadingZeros.Dropped(CanonicalForm.Of(code)) && seen.Length > 0 =>
                GlyphFit.SameShape,
            _ => null,
        };
    }

    private static int DigitsThatDiffer(string seen, string code) =>
        seen.Zip(GlyphShapes.Plain(code)).Count(pair => GlyphShapes.Distance(pair.First, pair.Second) > 0);

    private static GlyphReading Of(string code, bool? flashing, Blinks? blinks)
    {
        string canonical = CanonicalForm.Of(code);
        return new GlyphReading(canonical, LookAlikes.Of(canonical), flashing, blinks?.Count, blinks?.Lamps ?? []);
    }
}
