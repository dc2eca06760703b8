using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.State;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Conversation.Deciding;

/// <summary>Chooses the next step of a walk: least expected minutes to a verified repair, within what this person may do here.</summary>
internal sealed class StepChooser(Library library)
{
    private readonly LivePlanner _planner = new();
    private readonly NothingFound _nothingFound = new(library, library.HandOverMinutes);

    private readonly NearTies _nearTies = new(library);
    private readonly CustomOfTheTrade _custom = new(library);
    private readonly SafeStateFirst _safeFirst = new(library);

    /// <summary>What must be proven before a part is changed.</summary>
    public ProofDemand Proof { get; } = new(library);

    /// <summary>The next step; null when leaving the case to somebody else is best, or nothing is left.</summary>
    public StepChosen? Choose(CaseView view) => Choose(view, Plan(view));

    /// <summary>What the answers to a check would lead to, impossible ones left out.</summary>
    public ImmutableArray<Prospect> Foresee(CaseView view, PlannedStep.DoCheck step) =>
        [.. view.Belief.Foresee(library.Graph.Find(step.Check)!).Select(seen => Foresee(view, step, seen))];

    private Prospect Foresee(CaseView view, PlannedStep.DoCheck step, Foreseen seen)
    {
        ImmutableArray<double> weights = Evidence.Seen(library.Graph.Find(step.Check)!, seen.Outcome).Weights;
        CaseState then = Fold.Apply(
            view.State,
            [new AccessReached(step.Access.Value), new OutcomeSeen(step.Check.Value, seen.Outcome.Value, weights, null, "")]);
        CaseView after = new(library, then with { Step = null });
        Plan? plan = Plan(after);
        return new Prospect(seen, Choose(after, plan), plan?.Options.FirstOrDefault()?.Minutes);
    }

    private StepChosen? Choose(CaseView view, Plan? plan) =>
        plan is null ? null : Wanted(view, plan) is { } wanted ? Before(view, wanted) ?? wanted : null;

    private StepChosen? Before(CaseView view, StepChosen wanted) => Allowed(view, _custom.Before(view, wanted));

    private StepChosen? Allowed(CaseView view, StepChosen? step) => step is not null && _safeFirst.Allows(view, step) ? step : null;

    /// <summary>The step that was put off because by the custom of the trade another one comes before it; null when none was.</summary>
    /// <param name="step">The id of the step that was chosen.</param>
    public string? BehindCustom(CaseView view, Plan plan, string step) =>
        Wanted(view, plan) is { } wanted && wanted.Id != step && Before(view, wanted)?.Id == step ? wanted.Id : null;

    /// <summary>The plan's own check, when another that takes nearly as long was taken in its place; else null.</summary>
    /// <param name="step">The id of the step that was chosen.</param>
    public string? BehindTie(CaseView view, Plan plan, string step) =>
        plan.Step is PlannedStep.DoCheck own && own.Check.Value != step
        && _nearTies.Best(view, plan) is PlannedStep.DoCheck best && best.Check.Value == step ? own.Check.Value : null;

    private StepChosen? Wanted(CaseView view, Plan plan) => _nearTies.Best(view, plan) switch
    {
        PlannedStep.DoCheck check => _nothingFound.Next(view, plan) ?? new StepChosen(StepKind.Check, check.Check.Value, check.Access.Value),
        PlannedStep.DoRepair repair when repair.Repair != RepairId.HandOver =>
            Allowed(view, Proof.Before(view, repair.Repair)) ?? new StepChosen(StepKind.Repair, repair.Repair.Value, repair.Access.Value),
        _ => BeforeHandOver(view),
    };

    // An owner who can mend nothing more is asked what helps the technician bring the right part.
    private StepChosen? BeforeHandOver(CaseView view)
    {
        if (view.Role.Rank > 0) return null;
        Situation telling = SituationOf(view) with { Objective = Objective.Isolate };
        return CaseProblem.From(library.Graph, view.Belief, telling).Problem is { } problem && Triage.Next(problem) is { } check
            ? new StepChosen(StepKind.Check, check.Check.Value, check.Access.Value)
            : null;
    }

    /// <summary>The whole plan, for saying why; null when no fault is left in question.</summary>
    public Plan? Plan(CaseView view) =>
        CaseProblem.From(library.Graph, view.Belief, SituationOf(view)).Problem is { } problem
            ? _planner.Plan(problem, problem.Begin())
            : null;

    private Situation SituationOf(CaseView view) => _safeFirst.Bar(view, new Situation(view.Role, view.Access)
    {
        BarredChecks = [.. view.State.PassedOver.Keys.Select(id => new CheckId(id)), .. NotHere(view)],
        BarredRepairs = [.. view.State.RepairsPassedOver.Select(id => new RepairId(id))],
        RefusedAccess = [.. view.State.AccessRefused.Select(id => new AccessId(id))],
        HandOverMinutes = library.HandOverMinutes,
    });

    private IEnumerable<CheckId> NotHere(CaseView view) =>
        library.Checks.Values.Where(page => !view.IsFor(page)).Select(page => page.Id);
}
