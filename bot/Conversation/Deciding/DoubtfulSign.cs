using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.State;
using DxAssistant.Conversation.Understanding.Answers;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>
/// A trouble told with "maybe" beside another: asked about once more before it leads to a repair or to the end.
/// </summary>
internal sealed class DoubtfulSign(StepChooser chooser)
{
    /// <summary>Before a repair: without the trouble another fault would be the likeliest.</summary>
    /// <returns>False when there is no such trouble, or when it was asked about already.</returns>
    public static bool AskBeforeRepair(TurnDraft turn) => Ask(turn, doubtful => Leads(turn, doubtful.Symptom));

    /// <summary>Before the end: without the trouble the walk would go on.</summary>
    /// <returns>False when there is no such trouble, or when it was asked about already.</returns>
    public bool AskBeforeEnd(TurnDraft turn) =>
        Ask(turn,
            doubtful => chooser.MinutesOn(turn.State
                with { Symptoms = turn.State.Symptoms.Remove(doubtful) }) is not null);

    private static bool Ask(TurnDraft turn, Func<ReportedSymptom, bool> matters)
    {
        if (turn.State.Symptoms.FirstOrDefault(told => IsOpen(turn, told) && matters(told)) is not { } doubtful)
            return false;
        Slot symptom = Slot.Of("symptom", turn.Library.Symptoms[new SymptomId(doubtful.Symptom)].Title);
        turn.Ask(QuestionKind.Doubt, doubtful.Symptom, turn.Speaker.Say(SegmentKind.Question, "ask-doubt", symptom),
        [
            turn.Option(DoubtAnswer.Yes, "option-doubt-yes"), turn.Option(DoubtAnswer.No, "option-doubt-no"),
            turn.Option(DoubtAnswer.Unknown, "option-doubt-unknown"),
        ], [], Offered.Always);
        return true;
    }

    private static bool IsOpen(TurnDraft turn, ReportedSymptom told) =>
        told.Confidence < 1 && turn.State.Symptoms.Length > 1
        && !turn.State.DoubtsTold.Contains(told.Symptom)
        && turn.Library.Symptoms.ContainsKey(new SymptomId(told.Symptom));

    private static bool Leads(TurnDraft turn, string symptom)
    {
        Belief without = turn.View.BeliefAfter(
            turn.View.Evidence.Where(one => one is not Evidence.SymptomReported told || told.Symptom.Value != symptom));
        return without.Ranked is [var other, ..] && turn.View.Belief.Ranked is [var now, ..] && other.Id != now.Id;
    }
}
