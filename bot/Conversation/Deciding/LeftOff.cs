using DxAssistant.Conversation.Replies;
using DxAssistant.Graph.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>
/// A breaker that trips as soon as there is power is not switched on to look further: an owner leaves it off and books.
/// </summary>
internal sealed class LeftOff(EndOfWalk end) : IDecision
{
    public void Decide(TurnDraft turn)
    {
        if (turn.View.Role.Rank > 0 || turn.State.Symptoms.IsEmpty
            || !turn.View.Results.Any(result => StaysOff(turn, result)))
            return;
        turn.Say(SegmentKind.Caution, "closed-leave-off");
        end.Say(turn);
    }

    private static bool StaysOff(TurnDraft turn, State.SeenResult result) =>
        result.Outcome is { } outcome
            && turn.Library.Checks[new CheckId(result.Check)].LeaveOff.Contains(new OutcomeId(outcome));
}
