using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Conversation.Understanding.Answers;

/// <summary>A lone digit where a reading is asked, which may be the number of an answer.</summary>
internal static class NumberAlone
{
    public static bool Is(string text) => text.Trim() is [>= '1' and <= '9'];

    /// <summary>The place in a list, from 0, that a lone digit names; null when it is none.</summary>
    public static int? PlaceOf(string text) => Is(text) ? text.Trim()[0] - '1' : null;

    public static bool AskForUnit(TurnDraft turn, string text, Unit unit, PagePlace place)
    {
        turn.Say(SegmentKind.Notice, "notice-number-alone", Slot.Said("number", text.Trim()),
            Slot.Of("unit", unit.Symbol, place));
        return true;
    }
}
