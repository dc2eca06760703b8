using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.Understanding.Answers;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>
/// Before a part is changed whose proof was left out: once more, is it done now, done without, or left to somebody
/// else?
/// </summary>
internal sealed class ProofGap(ProofDemand proof)
{
    /// <returns>False when nothing was left out that can be done now, or when it was asked already.</returns>
    public bool Ask(TurnDraft turn, RepairId repair)
    {
        ImmutableArray<CheckPage> open = [.. proof.NotDone(turn.View, repair).Where(check => IsOpen(turn, check))
            .Select(check => turn.Library.Checks[check])];
        if (open.IsEmpty || proof.Likeliest(turn.View, repair) is not { } fault) return false;
        turn.Say(SegmentKind.Notice, "proof-left-out",
            Slot.Of("fault", turn.Library.Faults[fault].Title),
            Slot.List("checks", [.. open.Select(page => page.Title)]));
        turn.Ask(QuestionKind.Proof, string.Join(' ', open.Select(page => page.Id.Value)), "ask-proof",
        [
            .. open.Select(
                page => new Option(page.Id.Value, turn.Speaker.Text("option-proof-now", Slot.Of("check", page.Title)))),
            turn.Option(ProofAnswer.Without, "option-proof-without"),
            turn.Option(ProofAnswer.Leave, "option-proof-leave"),
        ]);
        return true;
    }

    /// <summary>
    /// The access state nearest to where the unit stands in which a check can be done here; null when there is none.
    /// </summary>
    public static AccessId? PlaceOf(TurnDraft turn, CheckId check)
    {
        AccessStates open = turn.View.OpenAccess;
        Check node = turn.Library.Graph.Find(check)!;
        return !turn.View.Role.May(node.Who) ? null : node.Access.Where(open.Contains)
            .OrderBy(state => open.Minutes(turn.View.Access, state)).Select(state => (AccessId?)state).FirstOrDefault();
    }

    private static bool IsOpen(TurnDraft turn, CheckId check) =>
        turn.State.PassedOver.ContainsKey(check.Value) && !turn.State.GapsTold.Contains(check.Value)
            && PlaceOf(turn, check) is not null;
}
