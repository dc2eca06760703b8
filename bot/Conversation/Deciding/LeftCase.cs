namespace DxAssistant.Conversation.Deciding;

/// <summary>Who goes no further is told how to leave the unit and what to leave to whom.</summary>
internal sealed class LeftCase(EndOfWalk end) : IDecision
{
    public void Decide(TurnDraft turn)
    {
        if (turn.State.IsLeft) end.Leave(turn);
    }
}
