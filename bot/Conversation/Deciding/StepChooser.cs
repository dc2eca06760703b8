using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.State;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Walks;

namespace DxAssistant.Conversation.Deciding;

/// <summary>
/// Chooses the next step of a case: least expected minutes to a verified repair, within what this person may do here.
/// </summary>
internal sealed class StepChooser(Library library)
{
    private readonly WalkChooser _walks = new(library);

    // A few kilobytes each: room for the first steps of all complaints on all series.
    private readonly Remembered<StepKey, LaidStep> _known = new(4_096);

    // Two hundred bytes each: room for what a busy week asks.
    private readonly Remembered<StepKey, StepChosen> _chosen = new(131_072);

    /// <summary>What must be proven before a part is changed.</summary>
    public ProofDemand Proof { get; } = new(library);

    /// <summary>What an owner is not sent to, because nobody looked.</summary>
    public UnseenRepairs Unseen { get; } = new(library);

    /// <summary>The next step; null when leaving the case to somebody else is best, or nothing is left.</summary>
    public StepChosen? Choose(CaseView view)
    {
        WalkSight sight = SightOf(view);
        StepChosen? chosen = _chosen.Of(sight.Key, () => Chosen(Walk(view, sight)));
        StepChosen? next = chosen is { Kind: StepKind.Check } && view.Role.Rank == 0
            ? SeenFirst(view, sight) ?? chosen
            : chosen;
        return next is not null && StaysOff(view, next) ? null : next;
    }

    // Where a sign of danger demands a safe state, and a repair was left out, nothing is switched on to look further:
    // whichever repair that was, its fault may be there still.
    private bool StaysOff(CaseView view, StepChosen chosen) => !view.State.RepairsPassedOver.IsEmpty
        && FirstIn(library, view.State) is { IsEmpty: false } safe && !safe.Contains(new AccessId(chosen.Access));

    // An owner who saw dust puts that right, and is asked no more before: what the plan reckons in minutes, people take
    // for not being heard.
    private StepChosen? SeenFirst(CaseView view, WalkSight sight) => Walk(view, sight)?.Plan.Options
        .Where(option => option.Step is PlannedStep.DoRepair repair && repair.Repair != RepairId.HandOver
            && Unseen.IsSeen(view, repair.Repair))
        .OrderBy(option => option.Minutes).Select(option => option.Step).OfType<PlannedStep.DoRepair>()
        .Select(repair => new StepChosen(StepKind.Repair, repair.Repair.Value, repair.Access.Value)).FirstOrDefault();

    /// <summary>
    /// The next step with the plan and the rules it came from; null when no fault is left in question.
    /// </summary>
    public LaidStep? Walk(CaseView view) => Walk(view, SightOf(view));

    /// <summary>
    /// How far the end of a case so far along is, expected minutes; null when nothing would be done but help whoever
    /// comes next.
    /// </summary>
    public double? MinutesOn(CaseState state) => Walk(new CaseView(library, state with { Step = null })) is { } walk
        && GoesOn(walk.Plan.Step) && GoesOn(walk.Step)
        ? walk.Plan.Minutes
        : null;

    /// <summary>What the answers to a check would lead to, impossible ones left out.</summary>
    public ImmutableArray<Prospect> Foresee(CaseView view, PlannedStep.DoCheck step) =>
        [.. view.Belief.Foresee(library.Graph.Find(step.Check)!).Select(seen => Foresee(view, step, seen))];

    /// <summary>Whether the pages of the symptoms told name states in which work begins.</summary>
    public static bool DemandsSafeState(Library library, CaseState state) => !FirstIn(library, state).IsEmpty;

    private bool GoesOn(PlannedStep step) =>
        step is PlannedStep.DoCheck
            || (step is PlannedStep.DoRepair repair && repair.Repair != RepairId.HandOver
                && !EndOfWalk.IsWatching(library, repair.Repair));

    private LaidStep? Walk(CaseView view, WalkSight sight) => _known.Of(
        sight.Key, () => _walks.Choose(WalkSpot.Of(library.Graph, view.Belief, sight.Situation, sight.FirstIn)));

    private WalkSight SightOf(CaseView view)
    {
        (Situation situation, ImmutableHashSet<AccessId> firstIn) = (SituationOf(view), FirstIn(view));
        return new WalkSight(StepKey.Of(view.Belief, situation, firstIn), situation, firstIn);
    }

    private Prospect Foresee(CaseView view, PlannedStep.DoCheck step, Foreseen seen)
    {
        ImmutableArray<double> weights = Evidence.Seen(library.Graph.Find(step.Check)!, seen.Outcome).Weights;
        CaseState then = Fold.Apply(
            view.State,
            [new AccessReached(step.Access.Value),
                new OutcomeSeen(step.Check.Value, seen.Outcome.Value, weights, null, "")
                {
                    Leaves = library.Checks[step.Check].Leaves?.Value,
                }]);
        LaidStep? next = Walk(new CaseView(library, then with { Step = null }));
        return new Prospect(seen, Chosen(next), next?.Plan.Options.FirstOrDefault()?.Minutes);
    }

    private static StepChosen? Chosen(LaidStep? walk) => walk?.Step switch
    {
        PlannedStep.DoCheck check => new StepChosen(StepKind.Check, check.Check.Value, check.Access.Value),
        PlannedStep.DoRepair repair when repair.Repair != RepairId.HandOver =>
            new StepChosen(StepKind.Repair, repair.Repair.Value, repair.Access.Value),
        _ => null,
    };

    private Situation SituationOf(CaseView view) => new(view.Role, view.Access)
    {
        BarredChecks = [.. view.State.PassedOver.Keys.Select(id => new CheckId(id)), .. NotHere(view)],
        BarredRepairs = [.. view.State.RepairsPassedOver.Select(id => new RepairId(id)), .. Unseen.Of(view)],
        RefusedAccess = [.. view.State.AccessRefused.Select(id => new AccessId(id))],
        HandOverMinutes = library.HandOverMinutes,
    };

    // Of what could tell the faults in question apart: no other check is planned.
    private IEnumerable<CheckId> NotHere(CaseView view) =>
        library.Graph.ChecksOf(view.Belief.Ranked.Where(ranked => ranked.Probability > CaseProblem.Negligible)
            .Select(ranked => ranked.Id))
            .Where(check => !view.IsFor(library.Checks[check.Id])).Select(check => check.Id);

    private ImmutableHashSet<AccessId> FirstIn(CaseView view) => SafeStateFirst.StillDemanded(
        library, FirstIn(library, view.State), view.Results.Select(result => new CheckId(result.Check)));

    private static ImmutableHashSet<AccessId> FirstIn(Library library, CaseState state) =>
        SafeStateFirst.StatesOf(library, state.Symptoms.Select(told => new SymptomId(told.Symptom)));

    /// <summary>All that a choice depends on besides the pages and the belief.</summary>
    /// <param name="Key">The same with the belief, by which the choice is kept in mind.</param>
    private sealed record WalkSight(StepKey Key, Situation Situation, ImmutableHashSet<AccessId> FirstIn);
}
