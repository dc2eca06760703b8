using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
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

    // What was seen beside the first fault is where the walk for the second begins: the trouble is the same, and what
    // the repair did not change holds still.
    private static bool GoOn(TurnDraft turn, string check)
    {
        if (turn.State.Results.All(result => result.Check != check)) return false;
        RepairPage made = turn.Library.Repairs[new RepairId(turn.State.Repairs[^1].Repair)];
        turn.Happen(new SecondFaultBegun
        {
            Carried = new CarriedOver(check, [.. turn.State.Results.Select(result => result.Check)
                .Where(known => !made.Changes.Contains(new CheckId(known)))]),
        });
        turn.Say(SegmentKind.Notice, "notice-second-fault");
        return true;
    }

    // The trouble that waited is the second fault's.
    private static bool Take(TurnDraft turn, string symptom)
    {
        if (!turn.State.PutOff.Contains(symptom)
            || !turn.Library.Symptoms.TryGetValue(new SymptomId(symptom), out var page))
            return false;
        turn.Say(SegmentKind.Understood, "understood-symptom", Slot.Of("symptom", page.Title));
        Symptoms.Report(turn, symptom, page.Title.Text);
        return true;
    }

    public override bool Hear(TurnDraft turn, OpenQuestion question, string text) =>
        words.Means("words-no", text) ? Choose(turn, question, "none")
        : words.Means("words-yes", text) ? Choose(turn, question, "some")
        : base.Hear(turn, question, text);
}
