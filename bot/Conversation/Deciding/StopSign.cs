using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Understanding;
using DxAssistant.Graph.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>A sign of danger ends an owner's walk: make safe, keep away, call a licensed person.</summary>
internal sealed class StopSign(ClosedCase closed) : IDecision
{
    public void Decide(TurnDraft turn)
    {
        if (turn.View.Role.Rank > 0 || !IsSeen(turn)) return;
        turn.Say(SegmentKind.Caution, "closed-stop");
        Close(turn);
        closed.Decide(turn);
    }

    /// <summary>Nobody can tell whether there is danger: the walk ends as if there were.</summary>
    public static void Unknown(TurnDraft turn)
    {
        turn.Say(SegmentKind.Caution, "closed-stop-unknown");
        Close(turn);
    }

    private static void Close(TurnDraft turn)
    {
        string[] phrases = [.. Signs(turn).SelectMany(sign => sign.AtOnce).Distinct()];
        if (phrases.Length == 0) phrases = ["closed-stop-safe", "closed-stop-gas"];
        foreach (string phrase in phrases.Where(phrase => !turn.Says(phrase))) turn.Say(SegmentKind.Caution, phrase);
        turn.Happen(new Closed("book"));
    }

    private static IEnumerable<DangerSign> Signs(TurnDraft turn) =>
        turn.View.Results.Where(result => IsStop(turn, result))
        .Select(
            result => new DangerSign(turn.Library.Checks[new CheckId(result.Check)], new OutcomeId(result.Outcome!)));

    /// <summary>Whether a sign of danger was seen.</summary>
    public static bool IsSeen(TurnDraft turn) => turn.View.Results.Any(result => IsStop(turn, result));

    /// <summary>Whether a result is a sign of danger.</summary>
    public static bool IsStop(TurnDraft turn, State.SeenResult result) =>
        result.Outcome is { } outcome
            && turn.Library.Checks[new CheckId(result.Check)].Stop.Contains(new OutcomeId(outcome));
}
