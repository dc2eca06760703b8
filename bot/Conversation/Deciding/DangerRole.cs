namespace DxAssistant.Conversation.Deciding;

/// <summary>
/// After a sign of danger nothing is asked before it is known who is there: an owner's case ends with it.
/// </summary>
internal sealed class DangerRole(MissingRole role) : IDecision
{
    public void Decide(TurnDraft turn)
    {
        if (turn.View.Results.Any(result => StopSign.IsStop(turn, result))) role.Decide(turn);
    }
}
