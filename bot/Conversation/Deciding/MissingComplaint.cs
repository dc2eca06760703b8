using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Told;

namespace DxAssistant.Conversation.Deciding;

/// <summary>Nothing is known of what is wrong.</summary>
internal sealed class MissingComplaint : IDecision
{
    public void Decide(TurnDraft turn)
    {
        if (turn.State is { Symptoms.IsEmpty: true, Code: null } && !WaitsToBeConfirmed(turn))
            turn.Ask(QuestionKind.Complaint, "", "ask-complaint");
    }

    private static bool WaitsToBeConfirmed(TurnDraft turn) => turn.State.Unconfirmed
        .Any(item => item is { Taken: true, Thing: ToldThing.Code or ToldThing.Symptom });
}
