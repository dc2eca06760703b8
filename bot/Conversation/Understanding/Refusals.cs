using DxAssistant.Conversation.Replies;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Search;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Requests that could hurt somebody get a fixed answer and the safe way, whatever question is open.</summary>
internal sealed class Refusals(Matcher matcher)
{
    /// <returns>False when the request is harmless.</returns>
    public bool Refuse(TurnDraft turn, string text)
    {
        MatchResult match = matcher.Match(text, turn.State.Series);
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
