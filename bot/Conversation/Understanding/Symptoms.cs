using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Enters a symptom into the case.</summary>
internal static class Symptoms
{
    /// <summary>Reports a symptom; after a verified repair it is the sign of a second fault.</summary>
    /// <param name="confidence">How sure it is; over 0, at most 1.</param>
    public static void Report(TurnDraft turn, string symptom, string words, double confidence = 1, bool comesAndGoes = false)
    {
        if (turn.State.Repairs is [.., { Works: true }]) turn.Happen(new SecondFaultBegun());
        if (turn.State.Approach is not null) turn.Say(SegmentKind.Caution, "notice-taken-back-access");
        turn.Happen(new SymptomReported(symptom, confidence, words, comesAndGoes));
    }
}
