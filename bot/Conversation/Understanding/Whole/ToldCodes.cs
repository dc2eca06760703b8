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
        string rest = piece;
        while (GlyphReader.TryFind(SeriesNames.Blanked(turn.Library, rest), out GlyphReading? reading, out var span) && span.Length > 0)
        {
            string code = Codes.Shown(reading);
            if (!(series is null ? turn.Library.Series.Values : [series]).Any(page => CodeLookUp.Has(page, code))) break;
            found.Add(new ToldThing.Code(code, Codes.Look(reading)), piece);
            rest = string.Concat(rest.AsSpan(0, span.Start), " ", rest.AsSpan(span.End));
        }

        return rest;
    }
}
