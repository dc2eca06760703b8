using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>
/// The walk itself: chooses the next check or repair, brings the unit to its access state, and asks it.
/// </summary>
internal sealed class NextStep(StepChooser chooser, EndOfWalk end) : IDecision
{
    private readonly ProofGap _gap = new(chooser.Proof);
    private readonly LeftOutChecks _leftOut = new(chooser);
    private readonly DoubtfulSign _doubt = new(chooser);

    public void Decide(TurnDraft turn)
    {
        while (turn.Question is null)
        {
            if (Standing(turn) is null && chooser.Choose(turn.View) is { } chosen) turn.Happen(chosen);
            if (Standing(turn) is { } step) Ask(turn, step);
            else if (!AsksOnceMore(turn)) end.Say(turn);
        }
    }

    // The step on hand, unless its page is gone from the content.
    private static ChosenStep? Standing(TurnDraft turn) =>
        turn.State.Step is { } step && Exists(turn, step) ? step : null;

    private static bool Exists(TurnDraft turn, ChosenStep step) =>
        turn.Library.Access.ContainsKey(new AccessId(step.Access))
        && (step.Kind == StepKind.Check
            ? turn.Library.Checks.ContainsKey(new CheckId(step.Id))
            : turn.Library.Repairs.ContainsKey(new RepairId(step.Id)));

    private void Ask(TurnDraft turn, ChosenStep step)
    {
        if (step.Kind == StepKind.Repair && EndOfWalk.IsWatching(turn.Library, new RepairId(step.Id)))
        {
            if (!AsksOnceMore(turn)) end.WatchOrBook(turn, turn.Library.Repairs[new RepairId(step.Id)]);
            return;
        }

        if (step.Kind == StepKind.Repair && turn.State.Approach is null)
        {
            if (DoubtfulSign.AskBeforeRepair(turn) || _gap.Ask(turn, new RepairId(step.Id))) return;
            Conclude(turn, step);
        }

        AccessProgress progress = AccessWay.Ask(turn, new AccessId(step.Access));
        if (progress == AccessProgress.Asked) return;
        // Refused from here on: the next choice is another one, and there are only so many states.
        if (progress == AccessProgress.NoWay) turn.Happen(new AccessRefused(step.Access));
        else if (step.Kind == StepKind.Check) CheckQuestion.Ask(turn, turn.Library.Checks[new CheckId(step.Id)]);
        else RepairQuestion.Ask(turn, turn.Library.Repairs[new RepairId(step.Id)]);
    }

    private bool AsksOnceMore(TurnDraft turn) => _doubt.AskBeforeEnd(turn) || _leftOut.Ask(turn);

    private void Conclude(TurnDraft turn, ChosenStep step)
    {
        if (turn.State.LastReply?.Segments.Any(segment => segment.Kind == SegmentKind.Conclusion) == true) return;
        var repair = new RepairId(step.Id);
        // What was said in full before the way to the repair began is not read again on a phone at its end.
        bool wasSaid = (turn.Happened<AccessReached>() && !turn.Happened<StepChosen>())
            || turn.Happened<RepairToRedo>();
        ConclusionSpeech.Say(turn, turn.Library.Graph.Find(repair)!, chooser.Proof.NotDone(turn.View, repair),
            inShort: wasSaid);
    }
}
