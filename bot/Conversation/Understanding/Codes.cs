using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Knowledge.Glyphs;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Finds a display code or a blink pattern in a message.</summary>
internal static class Codes
{
    private static readonly GlyphReading Nothing = new("", []);

    /// <returns>
    /// False when there is none, or when one is hardly meant: in the middle of a walk a code must be one of the series.
    /// </returns>
    public static bool Hear(TurnDraft turn, string text)
    {
        string heard = turn.Heard(NoCodes.Blanked(turn, text));
        return GlyphReader.TryRead(heard, out GlyphReading? reading) && Take(turn, reading);
    }

    /// <summary>
    /// The same for words that nothing else could be made of, where a code or a complaint is asked for.
    /// </summary>
    public static bool Guess(TurnDraft turn, string text)
    {
        if (turn.State.Question is not (null or { Kind: QuestionKind.Complaint or QuestionKind.Code })) return false;
        GlyphReading reading = GlyphReader.Read(turn.Heard(NoCodes.Blanked(turn, text)));
        bool known = turn.View.Series is { } series
            ? CodeLookUp.CanBe(series, Shown(reading))
            : turn.Library.Series.Values.Any(page => CodeLookUp.CanBe(page, Shown(reading)));
        return reading != Nothing && known && Take(turn, reading);
    }

    private static bool Take(TurnDraft turn, GlyphReading reading)
    {
        string code = Shown(reading);
        bool asked = turn.State.Question is null
            or { Kind: QuestionKind.Complaint or QuestionKind.Series or QuestionKind.Code or QuestionKind.Closed };
        if (!asked && turn.View.Series is { } known && !CodeLookUp.Has(known, code)) return false;
        if (turn.View.Series is { } series) CodeLookUp.Resolve(turn, series, code, Look(reading));
        else if (turn.Library.Series.Values.Any(page => CodeLookUp.CanBe(page, code)))
        {
            turn.Say(SegmentKind.Understood, "understood-display",
                Slot.Said("code", $"{code} {Look(reading)}".TrimEnd()));
            turn.Happen(new CodeReported(code, Look(reading)));
        }
        else turn.Say(SegmentKind.Notice, "notice-code-elsewhere", Slot.Said("code", code));

        return true;
    }

    // Where only blinks are told, it is a lamp that shows them.
    public static string Shown(GlyphReading reading) =>
        reading.Canonical.Length > 0 ? reading.Canonical : CodeLookUp.Lamp;

    // As series pages write it; null when the message does not say how the code is shown.
    public static string? Look(GlyphReading reading) =>
        LampPattern.Of(reading) is { } lamps
            ? lamps.ToString()
            : reading.Flashing switch { true => "flashing", false => "steady", null => null };
}
