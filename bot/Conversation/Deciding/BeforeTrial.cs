using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.State;
using DxAssistant.Conversation.Understanding.Answers;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>
/// What a repair's page names in <c>before-trial</c>: the unit is not switched on after it before each of these checks
/// has a sound result. Another result is a second fault, and the walk goes on to it; without a result who was not
/// sure is asked once more, and then the case is left to others.
/// </summary>
internal sealed class BeforeTrial(EndOfWalk end)
{
    /// <summary>Does what is still to be done before the trial run.</summary>
    /// <returns>Whether the trial may begin.</returns>
    public bool IsOver(TurnDraft turn, RepairPage repair)
    {
        foreach (CheckPage check in repair.BeforeTrial.Select(id => turn.Library.Checks[id]).Where(turn.View.IsFor))
        {
            if (turn.View.Results.FirstOrDefault(known => known.Check == check.Id.Value) is not { } result)
                return Measure(turn, check);
            if (!IsSound(turn, check, result)) return TellSecond(turn, repair, check, result);
        }

        return true;
    }

    // More likely than not what a unit without a fault shows most often.
    private static bool IsSound(TurnDraft turn, CheckPage check, SeenResult result)
    {
        var healthy = turn.Library.Graph.Find(check.Id)!.Row(FaultId.NoneOfThese);
        return result.Weights[healthy.IndexOf(healthy.Max())] * 2 > result.Weights.Sum();
    }

    private bool Measure(TurnDraft turn, CheckPage check)
    {
        AccessId? nearest = ProofGap.PlaceOf(turn, check.Id);
        bool isLeftOut = turn.State.PassedOver.TryGetValue(check.Id.Value, out CommandWord why);
        if (why == CommandWord.Unsure && isLeftOut && nearest is not null && AsksOnceMore(turn, check)) return false;
        if (isLeftOut || nearest is not { } place)
        {
            turn.Say(SegmentKind.Caution, "trial-needs-check", Slot.Of("check", check.Title));
            turn.Happen(new LeftToOthers());
            end.Leave(turn);
            return false;
        }

        if (turn.State.Step?.Id != check.Id.Value)
            turn.Happen(new StepChosen(StepKind.Check, check.Id.Value, place.Value));
        if (AccessWay.Ask(turn, place) == AccessProgress.Asked) return false;
        turn.Say(SegmentKind.Notice, "trial-waits", Slot.Of("check", check.Title));
        CheckQuestion.Ask(turn, check);
        return false;
    }

    // Who was not sure what it reads looks again, before the case is left to others for that alone.
    private static bool AsksOnceMore(TurnDraft turn, CheckPage check)
    {
        if (turn.State.GapsTold.Contains(check.Id.Value)) return false;
        turn.Say(SegmentKind.Notice, "trial-waits", Slot.Of("check", check.Title));
        LeftOutChecks.Ask(turn, [check]);
        return true;
    }

    private static bool TellSecond(TurnDraft turn, RepairPage repair, CheckPage check, SeenResult result)
    {
        Repair cures = turn.Library.Graph.Find(repair.Id)!;
        turn.Happen(
            new FaultBeside(repair.Id.Value, VerifyAnswer.Likeliest(turn.View.Belief, cures).Value, check.Id.Value));
        turn.Say(SegmentKind.Notice, "fault-beside",
            Slot.Of("repair", repair.Title), Slot.Of("check", check.Title), Slot.Said("answer", result.Words));
        VerifyAnswer.Outdate(turn, repair);
        return false;
    }
}
