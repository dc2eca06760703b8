using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.Deciding;

/// <summary>Nothing is known of what is wrong.</summary>
internal sealed class MissingComplaint : IDecision
{
    public void Decide(TurnDraft turn)
    {
        if (turn.State is { Symptoms.IsEmpty: true, Code: null }) turn.Ask(QuestionKind.Complaint, "", "ask-complaint");
    }
}
