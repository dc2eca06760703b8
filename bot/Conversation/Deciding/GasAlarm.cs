using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>A symptom that is a gas alarm is answered like one told in words: at once, whoever is there.</summary>
internal sealed class GasAlarm : IDecision
{
    public void Decide(TurnDraft turn)
    {
        foreach (CheckPage page in turn.Library.Checks.Values.Where(page => !page.StopGas.IsEmpty && Sounds(turn, page)))
        {
            if (!turn.Says("closed-stop-gas")) turn.Say(SegmentKind.Caution, "closed-stop-gas");
            OutcomeId sign = page.StopGas[0];
            string words = page.Outcomes.First(option => option.Id == sign).Answer.Text;
            turn.Happen(new OutcomeSeen(page.Id.Value, sign.Value, Even(page), null, words));
        }
    }

    /// <summary>Whether the trouble is such an alarm.</summary>
    public static bool IsTrouble(TurnDraft turn) =>
        turn.Library.Checks.Values.Any(page => turn.State.Symptoms.Any(reported => page.Alarm.Contains(new SymptomId(reported.Symptom))));

    private static bool Sounds(TurnDraft turn, CheckPage page) =>
        turn.View.AppliesHere(page.Series)
        && turn.State.Symptoms.Any(reported => page.Alarm.Contains(new SymptomId(reported.Symptom)))
        && turn.State.Results.All(result => result.Check != page.Id.Value);

    // The symptom has been weighed already; its alarm must not count twice, least of all for a false one.
    private static ImmutableArray<double> Even(CheckPage page) => [.. page.Outcomes.Select(_ => 1.0)];
}
