using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Speaking;

/// <summary>Says why the open question is asked, in the numbers that chose it.</summary>
internal sealed class WhySpeech(StepChooser chooser)
{
    public void Say(TurnDraft turn)
    {
        switch (turn.State.Question?.Kind)
        {
            case QuestionKind.Series or QuestionKind.Code: turn.Say(SegmentKind.Why, "why-series"); break;
            case QuestionKind.Role: turn.Say(SegmentKind.Why, "why-role"); break;
            case QuestionKind.Access: SayAccess(turn); break;
            case QuestionKind.Check or QuestionKind.Meaning or QuestionKind.Repair: SayStep(turn); break;
            default: turn.Say(SegmentKind.Why, "why-first"); break;
        }
    }

    private void SayAccess(TurnDraft turn)
    {
        if (turn.State.Step is { } step) turn.Say(SegmentKind.Why, "why-access", Named(turn, "step", step.Id));
        else turn.Say(SegmentKind.Why, "why-trial");
        SayStep(turn);
    }

    private void SayStep(TurnDraft turn)
    {
        if (turn.State.Step is not { } step || chooser.Plan(turn.View) is not { } plan) return;
        if (plan.Step is PlannedStep.DoRepair { Repair: var repair } && step.Kind == StepKind.Check
            && chooser.Proof.Likeliest(turn.View, repair) is { } suspect)
            turn.Say(SegmentKind.Why, "why-proof", Named(turn, "step", step.Id), Slot.Of("fault", turn.Library.Faults[suspect].Title));
        PlanOption? own = plan.Options.FirstOrDefault(option => IdOf(option.Step) == step.Id);
        if (own is null) return;
        Segment why = turn.Speaker.Say(SegmentKind.Why, own.Step is PlannedStep.DoCheck ? "why-check" : "why-repair",
            Named(turn, "step", step.Id), Slot.Figure("minutes", own.Price));
        turn.Say(BeliefStory.Of(turn.Library, turn.State) is { } story ? why with { Pictures = [story] } : why);
        turn.Say(SegmentKind.Why, "why-expected", Slot.Figure("minutes", own.Minutes));
        SayRunnerUp(turn, plan, step.Id);
        if (own.Step is PlannedStep.DoCheck check) SayAnswers(turn, turn.Library.Graph.Find(check.Check)!);
    }

    private static void SayRunnerUp(TurnDraft turn, Plan plan, string step)
    {
        PlanOption? next = plan.Options.FirstOrDefault(option => IdOf(option.Step) != step && IdOf(option.Step) != RepairId.HandOver.Value);
        if (next is null) turn.Say(SegmentKind.Why, "why-only-way");
        else turn.Say(SegmentKind.Why, "why-runner-up", Named(turn, "action", IdOf(next.Step)), Slot.Figure("minutes", next.Minutes));
    }

    // What each answer would make most likely.
    private static void SayAnswers(TurnDraft turn, Check check)
    {
        CheckPage page = turn.Library.Checks[check.Id];
        for (int outcome = 0; outcome < check.Outcomes.Length; outcome++)
        {
            (FaultId fault, double probability) = After(turn.View.Belief, check, outcome);
            turn.Say(SegmentKind.Why, "why-answer", Slot.Of("answer", page.Outcomes[outcome].Answer),
                Slot.Of("fault", turn.Library.Faults[fault].Title),
                Slot.Figure("percent", ConclusionSpeech.Percent(probability)));
        }
    }

    private static (FaultId Fault, double Probability) After(Belief belief, Check check, int outcome)
    {
        double total = 0, best = -1;
        FaultId likeliest = belief.Ranked[0].Id;
        foreach (RankedFault ranked in belief.Ranked)
        {
            double weight = ranked.Probability * check.Row(ranked.Id)[outcome];
            total += weight;
            if (weight > best) (best, likeliest) = (weight, ranked.Id);
        }

        return (likeliest, total > 0 ? best / total : 0);
    }

    private static string IdOf(PlannedStep step) => step switch
    {
        PlannedStep.DoCheck check => check.Check.Value,
        PlannedStep.DoRepair repair => repair.Repair.Value,
        _ => "",
    };

    private static Slot Named(TurnDraft turn, string slot, string id) => Slot.Of(slot,
        turn.Library.Checks.TryGetValue(new CheckId(id), out CheckPage? check) ? check.Title
        : turn.Library.Repairs[new RepairId(id)].Title);
}
