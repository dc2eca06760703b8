using DxAssistant.Conversation.Understanding;

namespace DxAssistant.Conversation.Deciding;

/// <summary>A code was told before the series was: now it can be looked up.</summary>
internal sealed class PendingCode : IDecision
{
    public void Decide(TurnDraft turn)
    {
        if (turn.State.Code is { } code && turn.View.Series is { } series)
            CodeLookUp.Resolve(turn, series, code, turn.State.Look);
    }
}
