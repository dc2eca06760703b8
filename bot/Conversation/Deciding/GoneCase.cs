namespace DxAssistant.Conversation.Deciding;

/// <summary>A trouble that is gone cannot be found now: the walk ends with what to watch and write down.</summary>
internal sealed class GoneCase(EndOfWalk end) : IDecision
{
    public void Decide(TurnDraft turn)
    {
        if (turn.State.IsGone == true && EndOfWalk.Watching(turn.Library) is { } advice)
            end.Watch(turn, advice, "closed-gone");
    }
}
