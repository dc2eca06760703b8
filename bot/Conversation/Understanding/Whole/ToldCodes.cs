using DxAssistant.Conversation.Told;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Glyphs;

namespace DxAssistant.Conversation.Understanding.Whole;

/// <summary>Display codes and blink patterns among other things that a message tells.</summary>
internal static class ToldCodes
{
    /// <summary>Takes the codes that a unit in question can show.</summary>
    /// <returns>The piece without them.</returns>
    public static string Take(TurnDraft turn, SeriesPage? series, string piece, Findings found)
    {
        if (Only(turn, series, piece) is { } only)
        {
            found.Add(only, piece);
            return "";
        }

        string rest = piece;
        while (GlyphReader.TryFind(NoCodes.Blanked(turn, rest), out GlyphReading? reading, out var span)
            && span.Length > 0)
        {
            string code = Codes.Shown(reading);
            if (!IsShown(turn, series, code)) break;
            found.Add(new ToldThing.Code(code, Codes.Look(reading)), piece);
            rest = string.Concat(rest.AsSpan(0, span.Start), " ", rest.AsSpan(span.End));
        }

        return rest;
    }

    /// <summary>The code that words are, and nothing else, however it is spelled.</summary>
    public static ToldThing.Code? Only(TurnDraft turn, SeriesPage? series, string piece) =>
        GlyphReader.TrySpell(turn.Heard(NoCodes.Blanked(turn, piece)), out GlyphReading? reading)
            && IsShown(turn, series, Codes.Shown(reading))
            ? new ToldThing.Code(Codes.Shown(reading), Codes.Look(reading)) : null;

    private static bool IsShown(TurnDraft turn, SeriesPage? series, string code) =>
        (series is null ? turn.Library.Series.Values : [series]).Any(page => CodeLookUp.Has(page, code));
}
