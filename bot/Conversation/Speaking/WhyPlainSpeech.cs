using System.Collections.Immutable;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Speaking;

/// <summary>Says to an owner what the answer to a step decides, in one sentence and without figures.</summary>
internal sealed class WhyPlainSpeech(StepChooser chooser)
{
    // Less likely answers are not worth a word.
    private const double Mentioned = 0.02;

    public void Say(TurnDraft turn)
    {
        if (turn.State.Step is not { } step) return;
        if (turn.Library.Checks.TryGetValue(new CheckId(step.Id), out CheckPage? page)) SayCheck(turn, page, step);
        else if (turn.Library.Graph.Find(new RepairId(step.Id)) is { } repair) SayRepair(turn, repair);
    }

    private void SayCheck(TurnDraft turn, CheckPage page, ChosenStep step)
    {
        ImmutableArray<FaultId> decided = page.Stop.IsEmpty ? Decided(turn, page.Id, new AccessId(step.Access)) : [];
        if (!page.Stop.IsEmpty) turn.Say(SegmentKind.Why, "why-plain-danger");
        else if (decided.Length > 1)
            turn.Say(SegmentKind.Why, "why-plain-between",
                Slot.List("faults", [.. decided.Select(fault => turn.Library.Faults[fault].Title)]));
        else if (decided is [var only])
            turn.Say(SegmentKind.Why, "why-plain-one", Slot.Of("fault", turn.Library.Faults[only].Title));
        else turn.Say(SegmentKind.Why, "why-first");
    }

    // What is likeliest after each answer.
    private ImmutableArray<FaultId> Decided(TurnDraft turn, CheckId check, AccessId access) =>
    [
        .. chooser.Foresee(turn.View, new PlannedStep.DoCheck(check, access))
            .Where(prospect => prospect.Seen.Probability >= Mentioned)
            .Select(prospect => prospect.Seen.Likeliest).Distinct(),
    ];

    private static void SayRepair(TurnDraft turn, Repair repair)
    {
        if (turn.View.Belief.Ranked.Select(ranked => ranked.Id)
            .FirstOrDefault(repair.Fixes.Contains) is { Value: { } } fault)
            turn.Say(SegmentKind.Why, "why-plain-repair", Slot.Of("fault", turn.Library.Faults[fault].Title));
    }
}
