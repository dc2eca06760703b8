using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Enters a symptom into the case.</summary>
internal static class Symptoms
{
    /// <summary>Reports a symptom; after a verified repair it is the sign of a second fault.</summary>
    /// <remarks>
    /// Where its page says how the unit must stand first, who may be no technician is told at once to switch off; what
    /// a sign of danger demands is said by <see cref="DangerTrouble"/>.
    /// </remarks>
    /// <param name="confidence">How sure it is; over 0, at most 1.</param>
    public static void Report(TurnDraft turn, string symptom, string words, double confidence = 1,
        bool comesAndGoes = false)
    {
        (string? code, string? look) = (turn.State.Code, turn.State.Look);
        Enter(turn, symptom, words, confidence, comesAndGoes);
        // A code that waits to be looked up is another complaint: it goes on waiting.
        if (code is not null) turn.Happen(new CodeReported(code, look));
    }

    /// <summary>Reports the symptom that a series gives a code, which has then been looked up.</summary>
    public static void ReportCode(TurnDraft turn, DisplayCode code) =>
        Enter(turn, code.Symptom.Value, $"{code.Display} {code.Look}", 1, comesAndGoes: false);

    private static void Enter(TurnDraft turn, string symptom, string words, double confidence, bool comesAndGoes)
    {
        if (turn.State.Repairs is [.., { Works: true }]) turn.Happen(new SecondFaultBegun());
        if (turn.State.Approach is not null) turn.Say(SegmentKind.Caution, "notice-taken-back-access");
        if (turn.View.Role.Rank == 0 && !turn.Says("closed-stop-safe") && !turn.Says("closed-stop-gas")
            && DemandsSafeState(turn, symptom)
            && turn.Library.Symptoms[new SymptomId(symptom)].Danger is null)
            turn.Say(SegmentKind.Caution, "closed-stop-safe");
        turn.Happen(new SymptomReported(symptom, confidence, words, comesAndGoes));
    }

    /// <summary>Whether the page of a symptom says how the unit must stand before anything else is done.</summary>
    public static bool DemandsSafeState(TurnDraft turn, string symptom) =>
        turn.Library.Symptoms.TryGetValue(new SymptomId(symptom), out SymptomPage? page) && !page.FirstIn.IsEmpty;
}
