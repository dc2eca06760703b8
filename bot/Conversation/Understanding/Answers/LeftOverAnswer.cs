using System.Collections.Immutable;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding.Answers;

internal sealed class LeftOverAnswer(CommandWords words) : Answer
{
    public override QuestionKind Kind => QuestionKind.LeftOver;

    public override bool Choose(TurnDraft turn, OpenQuestion question, string key)
    {
        switch (key)
        {
            case "none":
                turn.Happen(new Closed("repaired"));
                turn.Say(SegmentKind.Advice, "closed-repaired");
                return true;
            case "some":
                turn.Happen(new SecondFaultBegun());
                turn.Say(SegmentKind.Notice, "notice-second-fault");
                return true;
            case var beside when beside.StartsWith(LeftOver.SeenBeside, StringComparison.Ordinal):
                return GoOn(turn, beside[LeftOver.SeenBeside.Length..]);
            default:
                return Take(turn, key);
        }
    }

    // What was seen beside the first fault is where the walk for the second begins: the trouble is the same, and what the repair
    // did not change holds still.
    private static bool GoOn(TurnDraft turn, string check)
    {
        if (turn.State.Results.All(result => result.Check != check)) return false;
        (ImmutableArray<ReportedSymptom> told, ImmutableArray<SeenResult> seen, TriedRepair made) = (turn.State.Symptoms, turn.State.Results, turn.State.Repairs[^1]);
        RepairPage page = turn.Library.Repairs[new RepairId(made.Repair)];
        turn.Happen(new SecondFaultBegun());
        turn.Say(SegmentKind.Notice, "notice-second-fault");
        foreach (ReportedSymptom symptom in told)
            turn.Happen(new SymptomReported(symptom.Symptom, symptom.Confidence, symptom.Words, symptom.ComesAndGoes));
        turn.Happen(new RepairTriedBefore(made.Repair, made.Fault, page.Title.Text));
        foreach (SeenResult result in seen.Where(result => !page.Changes.Contains(new CheckId(result.Check))))
            turn.Happen(new OutcomeSeen(result.Check, result.Outcome, result.Weights, result.Verdict, result.Words));
        return true;
    }

    // The trouble that waited is the second fault's.
    private static bool Take(TurnDraft turn, string symptom)
    {
        if (!turn.State.PutOff.Contains(symptom) || !turn.Library.Symptoms.TryGetValue(new SymptomId(symptom), out var page)) return false;
        turn.Say(SegmentKind.Understood, "understood-symptom", Slot.Of("symptom", page.Title));
        Symptoms.Report(turn, symptom, page.Title.Text);
        return true;
    }

    public override bool Hear(TurnDraft turn, OpenQuestion question, string text) =>
        words.Means("words-no", text) ? Choose(turn, question, "none")
        : words.Means("words-yes", text) ? Choose(turn, question, "some")
        : base.Hear(turn, question, text);
}
