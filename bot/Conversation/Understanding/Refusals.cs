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

    /// <summary>
    /// Says the fixed answer, and the safe way of who is at the unit: no owner is told to measure or to open anything.
    /// </summary>
    public static void Say(TurnDraft turn, RefusalPage page)
    {
        if (!page.Unsafe
            && turn.State.Question is { Options.IsEmpty: false,
                Kind: not (QuestionKind.Complaint or QuestionKind.Closed) } && Misfit.IsAgain(turn))
        {
            SayOnce(turn, page);
            return;
        }

        bool isOwner = turn.State.Role is not null && turn.View.Role.Rank == 0;
        turn.Quote(SegmentKind.Refusal, page.Answer);
        turn.Quote(SegmentKind.Refusal, isOwner && !page.OwnersWay.IsEmpty ? page.OwnersWay : page.SafeWay);
    }

    // Off the subject once more at the same question: what may be answered is named, in place of what was said a moment
    // ago.
    private static void SayOnce(TurnDraft turn, RefusalPage page)
    {
        bool isSaid = turn.State.LastReply!.Segments.Any(segment => page.Answer.Any(line => line.Text == segment.Text));
        if (!isSaid) turn.Quote(SegmentKind.Refusal, page.Answer);
        Misfit.Say(turn);
    }
}
