using System.Globalization;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Takes in what was found about the unit by its serial number, and says it in one line each.</summary>
internal static class EarlierHearing
{
    public static void Hear(TurnDraft turn, MessageBody.Earlier found)
    {
        if (found.Reopens && turn.State.ClosedHow is not null)
        {
            turn.Happen(new Reopened());
            turn.Say(SegmentKind.Notice, "notice-reopened");
        }

        turn.Happen(new EarlierWorkFound(found.Work));
        foreach (EarlierWork work in found.Work) Say(turn, work);
    }

    private static void Say(TurnDraft turn, EarlierWork work)
    {
        if (!turn.Library.Repairs.TryGetValue(new RepairId(work.Repair), out var page)) return;
        turn.Say(SegmentKind.Notice, "notice-earlier-work", Slot.Of("repair", page.Title),
            Slot.Said("date",
                work.Done.ToString(work.IsOfAnother ? "yyyy-MM" : "yyyy-MM-dd", CultureInfo.InvariantCulture)));
    }
}
