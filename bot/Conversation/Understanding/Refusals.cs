using DxAssistant.Conversation.Replies;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Search;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Requests that could hurt somebody get a fixed answer and the safe way, whatever question is open.</summary>
internal static class Refusals
{
    /// <returns>False when the request is harmless.</returns>
    public static bool Refuse(TurnDraft turn, MatchResult match)
    {
        if (match.Decision != MatchDecision.Refuse) return false;
        if (match.RefusalId is { } page) Say(turn, turn.Library.Refusals[page]);
        else turn.Say(SegmentKind.Refusal, "refused");
        return true;
    }

    public static void Say(TurnDraft turn, RefusalPage page)
    {
        turn.Quote(SegmentKind.Refusal, page.Answer);
        turn.Quote(SegmentKind.Refusal, page.SafeWay);
    }
}
