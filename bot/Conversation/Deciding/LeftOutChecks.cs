using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.Understanding.Answers;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>
/// Before a walk ends without a repair: what was left out and could still lead to one, named once more.
/// </summary>
internal sealed class LeftOutChecks(StepChooser chooser)
{
    /// <returns>False when nothing was left out that leads on, or when it was named already.</returns>
    public bool Ask(TurnDraft turn)
    {
        ImmutableArray<CheckPage> open =
        [
            .. turn.State.PassedOver.Keys.Except(turn.State.GapsTold)
                .Where(check => CanBeDone(turn, new CheckId(check)))
                .Select(check => (Check: check, Minutes: MinutesWith(turn, check)))
                .Where(led => led.Minutes is not null).OrderBy(led => led.Minutes)
                .Take(turn.Library.Settings.BeginWith).Select(led => turn.Library.Checks[new CheckId(led.Check)]),
        ];
        if (open.IsEmpty) return false;
        turn.Say(SegmentKind.Notice, "left-out", Slot.List("checks", [.. open.Select(page => page.Title)]));
        Ask(turn, open);
        return true;
    }

    /// <summary>Asks for one of some checks, or for the end.</summary>
    public static void Ask(TurnDraft turn, ImmutableArray<CheckPage> open) =>
        turn.Ask(QuestionKind.LeftOut, string.Join(' ', open.Select(page => page.Id.Value)), "ask-left-out",
        [
            .. open.Select(
                page => new Option(page.Id.Value, turn.Speaker.Text("option-proof-now", Slot.Of("check", page.Title)))),
            turn.Option(LeftOutAnswer.End, "option-left-out-end"),
        ]);

    private static bool CanBeDone(TurnDraft turn, CheckId check) =>
        turn.Library.Checks.TryGetValue(check, out CheckPage? page) && turn.View.IsFor(page)
            && ProofGap.PlaceOf(turn, check) is not null;

    // What only helps whoever comes next is not asked twice.
    private double? MinutesWith(TurnDraft turn, string check) =>
        chooser.MinutesOn(turn.State with { PassedOver = turn.State.PassedOver.Remove(check) });
}
