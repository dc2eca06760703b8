using System.Globalization;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Knowledge.Glyphs;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Finds a display code or a blink pattern in a message.</summary>
internal static class Codes
{
    /// <returns>False when there is none, or when one is hardly meant: in the middle of a walk a code must be one of the series.</returns>
    public static bool Hear(TurnDraft turn, string text)
    {
        if (!GlyphReader.TryFind(text, out GlyphReading? reading)) return false;
        bool asked = turn.State.Question is null or { Kind: QuestionKind.Complaint or QuestionKind.Series or QuestionKind.Code };
        if (turn.View.Series is { } series)
        {
            if (!asked && !CodeLookUp.Has(series, reading.Canonical)) return false;
            CodeLookUp.Resolve(turn, series, reading.Canonical, Look(reading));
            return true;
        }

        if (!turn.Library.Series.Values.Any(page => CodeLookUp.Has(page, reading.Canonical)))
        {
            turn.Say(SegmentKind.Notice, "notice-code-elsewhere", Slot.Said("code", reading.Canonical));
            return true;
        }

        turn.Say(SegmentKind.Understood, "understood-display", Slot.Said("code", reading.Canonical));
        turn.Happen(new CodeReported(reading.Canonical, Look(reading)));
        return true;
    }

    // As series pages write it; null when the message does not say how the code is shown.
    private static string? Look(GlyphReading reading) =>
        reading.Blinks is { } blinks ? string.Create(CultureInfo.InvariantCulture, $"{blinks} blinks")
        : reading.Flashing switch { true => "flashing", false => "steady", null => null };
}
