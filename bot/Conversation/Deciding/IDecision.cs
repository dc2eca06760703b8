namespace DxAssistant.Conversation.Deciding;

/// <summary>One thing that may have to be asked or said next.</summary>
internal interface IDecision
{
    /// <summary>Ends the turn in a question when it is this one's turn to ask; else leaves the turn as it is.</summary>
    void Decide(TurnDraft turn);
}
