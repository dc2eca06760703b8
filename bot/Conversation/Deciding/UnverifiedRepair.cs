using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Understanding.Answers;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>A repair counts only once the unit was tried: brings it to the state for that, then asks.</summary>
internal sealed class UnverifiedRepair(EndOfWalk end) : IDecision
{
    private readonly BeforeTrial _first = new(end);

    public void Decide(TurnDraft turn)
    {
        if (turn.State.Unverified is not { } id) return;
        if (!turn.Library.Repairs.TryGetValue(new RepairId(id), out var repair)) return;
        if (!_first.IsOver(turn, repair) || IsOnItsWay(turn, repair)) return;
        turn.Say(SegmentKind.Notice, "verify-lead");
        turn.Ask(QuestionKind.Verify, id, turn.Speaker.Quote(SegmentKind.Question, repair.Verify),
            [turn.Option("yes", "option-yes"), turn.Option("no", "option-no"), .. Redo(turn, id)], [], Offered.Always);
    }

    // What the trial measures needs its own state, such as gauges on; who cannot bring the unit there tries it where
    // all repairs are tried.
    private static bool IsOnItsWay(TurnDraft turn, RepairPage repair)
    {
        AccessProgress own = repair.VerifyIn is { } place && turn.View.OpenAccess.Contains(place)
            ? AccessWay.Ask(turn, place)
            : AccessProgress.NoWay;
        return own == AccessProgress.Asked || (own == AccessProgress.NoWay
            && turn.Library.Graph.Access.Verify is { } there && AccessWay.Ask(turn, there) == AccessProgress.Asked);
    }

    // What anybody may do, such as washing a filter, is simply done once more.
    private static IEnumerable<Option> Redo(TurnDraft turn, string id) =>
        turn.Library.Graph.Find(new RepairId(id)) is { Who.Rank: > 0 }
            ? [turn.Option(VerifyAnswer.Redo, "option-redo")]
            : [];
}
