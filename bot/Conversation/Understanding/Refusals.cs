using DxAssistant.Conversation.Replies;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Search;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Requests that could hurt somebody get a fixed answer and the safe way, whatever question is open.</summary>
internal static class Refusals
{
    public static void Say(TurnDraft turn, MatchResult match)
    {
        if (match.RefusalId is { } page) Say(turn, turn.Library.Refusals[page]);
        else turn.Say(SegmentKind.Refusal, "refused");
    }

    /// <summary>Says the fixed answer, and the safe way of who is at the unit: no owner is told to measure or to open anything.</summary>
    public static void Say(TurnDraft turn, RefusalPage page)
    {
        bool isOwner = turn.State.Role is not null && turn.View.Role.Rank == 0;
        turn.Quote(SegmentKind.Refusal, page.Answer);
        turn.Quote(SegmentKind.Refusal, isOwner && !page.OwnersWay.IsEmpty ? page.OwnersWay : page.SafeWay);
    }
}
