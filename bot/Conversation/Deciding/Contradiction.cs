using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Graph;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>Results that cannot both be right are taken again before they lead the walk astray.</summary>
internal sealed class Contradiction : IDecision
{
    public void Decide(TurnDraft turn)
    {
        if (!turn.View.Belief.Contradicted) return;
        ImmutableArray<CheckPage> conflicts = [.. Conflicts(turn)];
        if (conflicts.IsEmpty) return;
        if (conflicts is [var alone])
            turn.Say(SegmentKind.Notice, "contradiction-alone", Slot.Of("check", alone.Title), Told(turn, alone));
        else turn.Say(SegmentKind.Notice, "contradiction", Results(turn, conflicts));
        if (conflicts is [var odd, var next, ..]
            && FitWithout(turn, odd) >= turn.Library.Settings.OddOne * FitWithout(turn, next))
            turn.Say(SegmentKind.Notice, "contradiction-odd", Slot.Of("check", odd.Title));
        else if (conflicts.Length > 1)
            turn.Say(SegmentKind.Notice, "contradiction-quickest", Slot.Of("check", Quickest(turn, conflicts).Title));
        turn.Ask(QuestionKind.Contradiction, string.Join(' ', conflicts.Select(page => page.Id.Value)),
            "ask-contradiction",
            [.. conflicts.Select(page => new Option(page.Id.Value, page.Title.Text)),
                turn.Option("keep", "option-keep-both")]);
    }

    /// <summary>Says how ill the results go together, and how much better without each of those in question.</summary>
    public static void SayWhy(TurnDraft turn)
    {
        Belief belief = turn.View.Belief;
        if (!belief.Contradicted) return;
        if (belief.Fit > 0) turn.Say(SegmentKind.Why, "why-contradiction", TimesSlot.Of(1 / belief.Fit));
        else turn.Say(SegmentKind.Why, "why-contradiction-never");
        foreach (CheckPage page in Conflicts(turn)) SayWithout(turn, page, belief.Fit);
    }

    // Those that were not kept as they are.
    private static IEnumerable<CheckPage> Conflicts(TurnDraft turn) => turn.View.Belief.Conflicts
        .Where(check => !turn.State.Accepted.Contains(check.Value)).Select(check => turn.Library.Checks[check]);

    private static void SayWithout(TurnDraft turn, CheckPage page, double fit)
    {
        double without = FitWithout(turn, page);
        if (without <= fit) return;
        if (fit > 0)
            turn.Say(SegmentKind.Why, "why-contradiction-without", Slot.Of("check", page.Title),
                TimesSlot.Of(without / fit));
        else turn.Say(SegmentKind.Why, "why-contradiction-fits", Slot.Of("check", page.Title));
    }

    // Where none stands out, the first to take again is the one that takes least time.
    private static CheckPage Quickest(TurnDraft turn, ImmutableArray<CheckPage> conflicts) =>
        conflicts.MinBy(page => turn.Library.Graph.Find(page.Id)!.Minutes)!;

    private static double FitWithout(TurnDraft turn, CheckPage page) => turn.View.BeliefAfter(
        turn.View.Evidence.Where(one => one is not Evidence.OutcomeSeen seen || seen.Check != page.Id)).Fit;

    // Each check with what it showed.
    private static Slot Results(TurnDraft turn, ImmutableArray<CheckPage> checks)
    {
        ImmutableArray<Segment> results =
        [
            .. checks.Select(page => turn.Speaker.Say(
                SegmentKind.Notice, "contradiction-result", Slot.Of("check", page.Title), Told(turn, page))),
        ];
        return new Slot("results", string.Join("; ", results.Select(result => result.Text)),
            [.. results.SelectMany(result => result.From).Distinct()]);
    }

    private static Slot Told(TurnDraft turn, CheckPage page) =>
        Slot.Said("answer", turn.State.Results.First(result => result.Check == page.Id.Value).Words);
}
