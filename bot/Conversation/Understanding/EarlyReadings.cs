using System.Collections.Immutable;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Conversation.Understanding;

/// <summary>
/// Readings that nobody asked for: of a check that comes later, or of one that was left out and does not come again
/// unless it is named.
/// </summary>
internal static class EarlyReadings
{
    /// <summary>Says beside the rest that they are not used, and what to do for it.</summary>
    /// <returns>False when there are none.</returns>
    public static bool Note(TurnDraft turn, string text)
    {
        if (ReadingParser.Parse(turn.Heard(text),
            ReadingContext.None) is not ReadingResult.Readings { List: var early })
            return false;
        var readings = Slot.Said("readings", string.Join(", ", early.Select(ShownValue.Of)));
        ImmutableArray<Passage> leftOut = [.. LeftOut(turn)
            .Where(page => early.Any(reading => page.Readings.Any(field => ReadingIntake.IsOfKind(reading, field))))
            .Select(page => page.Title)];
        if (leftOut.IsEmpty) turn.Note("notice-reading-early", readings);
        else turn.Note("notice-reading-left-out", readings, Slot.List("checks", leftOut));
        return true;
    }

    private static IEnumerable<CheckPage> LeftOut(TurnDraft turn) =>
        turn.State.PassedOver.Keys.Select(check => turn.Library.Checks.GetValueOrDefault(new CheckId(check)))
            .OfType<CheckPage>();
}
