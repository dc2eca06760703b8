using System.Collections.Immutable;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Walks;

namespace DxAssistant.Conversation.Speaking;

/// <summary>Says why a check or a repair comes next, in the numbers that chose it.</summary>
internal sealed class WhyStepSpeech(StepChooser chooser)
{
    // Less likely answers are among the figures, but not worth a line.
    private const double Mentioned = 0.02;

    // So many options are looked at for one that is no mere delay of the step.
    private const int LookedAt = 4;

    private readonly WhyPlainSpeech plain = new(chooser);

    public void Say(TurnDraft turn)
    {
        if (turn.View.Role.Rank == 0)
        {
            plain.Say(turn);
            return;
        }

        if (turn.State.Step is not { } step || chooser.Walk(turn.View) is not { Plan: var plan } walk) return;
        SayRules(turn, walk, step.Id);
        PlanOption? own = plan.Options.FirstOrDefault(option => IdOf(option.Step) == step.Id);
        if (own is null) return;
        Segment why = turn.Speaker.Say(SegmentKind.Why, own.Step is PlannedStep.DoCheck ? "why-check" : "why-repair",
            Named(turn, "step", step.Id), Slot.Figure("minutes", own.Price));
        turn.Say(BeliefStory.Of(turn.Library, turn.State) is { } story ? why with { Pictures = [story] } : why);
        ImmutableArray<Prospect> prospects = Foreseen(turn, own);
        own = own with { Minutes = Expected(own, prospects) };
        PlanOption? next = RunnerUp(turn, plan, step.Id);
        turn.Say(turn.Speaker.Say(SegmentKind.Why, "why-expected", Slot.Figure("minutes", own.Minutes),
                Slot.Figure("part", turn.Library.PartInVainMinutes), Slot.Figure("left", turn.Library.HandOverMinutes))
            with { Why = Figures(turn, own, plan, next, prospects) });
        if (next is not null) SayRunnerUp(turn, own, next, isMoved: !walk.Moves.IsEmpty);
        else turn.Say(SegmentKind.Why, Others(plan, step.Id).Any() ? "why-any-way" : "why-only-way");
        SayLeast(turn, own, plan);
        foreach (Prospect prospect in prospects.Where(prospect => prospect.Seen.Probability >= Mentioned))
            SayAnswer(turn, turn.Library.Checks[((PlannedStep.DoCheck)own.Step).Check], prospect);
        foreach (EarlierEffect effect in EarlierEffect.Of(turn.Library, turn.State)) SayEarlier(turn, effect);
        if (own.Step is PlannedStep.DoRepair repair && turn.Library.Graph.Find(repair.Repair) is { } mended)
            WhyFaultSpeech.SayRivals(turn, mended);
    }

    // The rule that put this step in another's place.
    private void SayRules(TurnDraft turn, LaidStep walk, string step)
    {
        if (Behind(walk, LaidRule.Proof, step) is { } before
            && (chooser.Proof.Likeliest(turn.View, new RepairId(before))
                ?? turn.View.Belief.Ranked[0].Id) is var suspect)
            turn.Say(SegmentKind.Why, "why-proof", Named(turn, "step", step),
                Slot.Of("fault", turn.Library.Faults[suspect].Title));
        if (Behind(walk, LaidRule.OwnWork, step) is not null)
            turn.Say(SegmentKind.Why, "why-own-work", Named(turn, "step", step));
        if (Behind(walk, LaidRule.Custom, step) is { } later)
            turn.Say(SegmentKind.Why, "why-custom", Named(turn, "step", step), Named(turn, "later", later));
        if (Behind(walk, LaidRule.NearTie, step) is { } other)
            turn.Say(SegmentKind.Why, "why-near-tie", Named(turn, "other", other), Named(turn, "step", step));
    }

    private static string? Behind(LaidStep walk, LaidRule rule, string step) =>
        walk.By(rule) is { } move && IdOf(move.To) == step ? IdOf(move.From) : null;

    // What each answer leads to was planned for itself: closer than the bound on an option that the plan did not
    // follow.
    private static double Expected(PlanOption own, ImmutableArray<Prospect> prospects) =>
        prospects.IsEmpty || prospects.Any(prospect => prospect.Minutes is null)
            ? own.Minutes
            : Math.Min(own.Minutes, own.Price
                + prospects.Sum(prospect => prospect.Seen.Probability * prospect.Minutes!.Value));

    private static void SayEarlier(TurnDraft turn, EarlierEffect effect)
    {
        foreach (var (odds, faults) in effect.Odds.GroupBy(fault => fault.Value)
            .Select(same => (same.Key, same.Select(fault => fault.Key).ToHashSet())))
        {
            ImmutableArray<Passage> named = [.. turn.View.Belief.Ranked.Where(ranked => faults.Contains(ranked.Id))
                .Select(ranked => turn.Library.Faults[ranked.Id].Title)];
            if (named.IsEmpty) continue;
            turn.Say(SegmentKind.Why, effect.Work.IsOfAnother ? "why-earlier-about" : "why-earlier",
                Named(turn, "repair", effect.Work.Repair), Days(effect.Work),
                Slot.Of("odds", odds.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture),
                    effect.Row.Place), Slot.List("faults", named));
        }
    }

    // Where only the month is known, to the nearest ten.
    private static Slot Days(EarlierWork work) =>
        Slot.Figure("days", work.IsOfAnother ? (work.Days + 5) / 10 * 10 : work.Days);

    private ImmutableArray<Prospect> Foreseen(TurnDraft turn, PlanOption option) =>
        option.Step is PlannedStep.DoCheck check ? chooser.Foresee(turn.View, check) : [];

    // The best option but the step, reckoned as far ahead. A check after which the step comes whatever it shows, only
    // puts it off.
    private PlanOption? RunnerUp(TurnDraft turn, Plan plan, string step) =>
        (from option in Others(plan, step).Take(LookedAt)
         let prospects = Foreseen(turn, option)
         where prospects.IsEmpty
             || prospects.Any(prospect => prospect.Seen.Probability >= Mentioned && prospect.Next?.Id != step)
         select option with { Minutes = Expected(option, prospects) }).MinBy(option => option.Minutes);

    private static IEnumerable<PlanOption> Others(Plan plan, string step) =>
        plan.Options.Where(option => IdOf(option.Step) != step && IdOf(option.Step) != RepairId.HandOver.Value);

    // Looked at so closely, another step may turn out as short, though no rule moved this one.
    private static void SayRunnerUp(TurnDraft turn, PlanOption own, PlanOption next, bool isMoved)
    {
        string phrase = next.Minutes >= own.Minutes ? "why-runner-up" : isMoved
            ? "why-runner-up-sooner"
            : "why-runner-up-near";
        turn.Say(SegmentKind.Why, phrase, Named(turn, "action", IdOf(next.Step)), Slot.Figure("minutes", next.Minutes));
    }

    // How far the plan may be from the best possible: nothing to say where it is known to be the best.
    private static void SayLeast(TurnDraft turn, PlanOption own, Plan plan)
    {
        if (Math.Round(plan.LowerBound) is > 0 and var least && least < Math.Round(own.Minutes))
            turn.Say(SegmentKind.Why, "why-least", Slot.Figure("minutes", plan.LowerBound));
    }

    private static void SayAnswer(TurnDraft turn, CheckPage page, Prospect prospect)
    {
        Foreseen seen = prospect.Seen;
        turn.Say(SegmentKind.Why, "why-answer",
            Slot.Of("answer", page.Outcomes.First(outcome => outcome.Id == seen.Outcome).Answer),
            Slot.Figure("chance", ConclusionSpeech.Percent(seen.Probability)),
            Slot.Of("fault", turn.Library.Faults[seen.Likeliest].Title),
            Slot.Figure("percent", ConclusionSpeech.Percent(seen.Share)),
            Slot.Figure("now", ConclusionSpeech.Percent(turn.View.Belief.ProbabilityOf(seen.Likeliest))));
        if (prospect is { Next: { } next, Minutes: { } minutes })
            turn.Say(SegmentKind.Why, "why-then", Named(turn, "step", next.Id), Slot.Figure("minutes", minutes));
        else if (prospect.Next is null) turn.Say(SegmentKind.Why, "why-then-handed");
    }

    private static WhyFigures Figures(TurnDraft turn, PlanOption own, Plan plan, PlanOption? next,
        ImmutableArray<Prospect> prospects) => new(
        IdOf(own.Step), Minutes(own.Minutes), Minutes(plan.LowerBound), next is null ? null : IdOf(next.Step),
        next is null ? null : Minutes(next.Minutes),
        [
            .. prospects.Select(prospect => new WhyAnswer(
                prospect.Seen.Outcome.Value, Share(prospect.Seen.Probability), prospect.Seen.Likeliest.Value,
                Share(turn.View.Belief.ProbabilityOf(prospect.Seen.Likeliest)), Share(prospect.Seen.Share),
                prospect.Next?.Id, prospect.Minutes is { } minutes ? Minutes(minutes) : null)),
        ]);

    private static double Minutes(double minutes) => Math.Round(minutes, 1);

    private static double Share(double share) => Math.Round(share, 3);

    private static string IdOf(PlannedStep step) => step switch
    {
        PlannedStep.DoCheck check => check.Check.Value,
        PlannedStep.DoRepair repair => repair.Repair.Value,
        _ => "",
    };

    /// <summary>A check or repair by its title.</summary>
    public static Slot Named(TurnDraft turn, string slot, string id) => Slot.Of(slot,
        turn.Library.Checks.TryGetValue(new CheckId(id), out CheckPage? check) ? check.Title
        : turn.Library.Repairs[new RepairId(id)].Title);
}
