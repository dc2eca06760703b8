using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Walks;

/// <summary>
/// Chooses the next step of a walk, for conversations, drawn walks and figures alike: the plan's, or what the rules
/// laid over it put in its place, none of them at more minutes than the pages allow it.
/// </summary>
/// <param name="work">The planner's work for a step.</param>
public sealed class WalkChooser(Library library, int work = LivePlanner.UsualWork)
{
    private readonly LivePlanner planner = new(work);
    private readonly IStepRule nearTies = new NearTies(library);
    private readonly ImmutableArray<IStepRule> once =
        [new ForegoneAnswer(library), new NothingFound(library), new ProofBeforePart(library),
            new OwnWorkFirst(library), new AskForTheNext(library)];
    private readonly IStepRule custom = new CustomOfTheTrade(library);

    /// <summary>The step; null when no fault is left in question.</summary>
    public LaidStep? Choose(WalkSpot spot)
    {
        if (spot.Problem(spot.Situation) is not { } problem) return null;
        WalkScene free = SceneOf(problem, spot);
        if (Safe(spot, problem) is not { } barred) return Laid(free, free.Plan.Step, []);
        WalkScene safe = SceneOf(barred, spot);
        PlannedStep step = NotLeft(safe.Plan);
        return Laid(safe, step, step == free.Plan.Step
            ? []
            : [new LaidMove(LaidRule.FirstIn, free.Plan.Step, step, Price(free, safe, step))]);
    }

    /// <summary>The plan alone, as if no rule were laid over it; null when no fault is left in question.</summary>
    public PlannedStep? Plain(WalkSpot spot) =>
        spot.Problem(spot.Situation) is { } problem ? planner.Plan(problem, problem.Begin()).Step : null;

    private WalkScene SceneOf(SequencingProblem problem, WalkSpot spot) =>
        new(problem, planner.Plan(problem, problem.Begin()), spot.Situation.Who);

    // The problem with everything barred that would be done in a state not safe yet; null when nothing is demanded or
    // can be done.
    private SequencingProblem? Safe(WalkSpot spot, SequencingProblem problem) =>
        SafeStateFirst.CanBeDone(problem, spot.FirstIn)
        && spot.Problem(SafeStateFirst.Bar(library, spot.Situation, spot.FirstIn)) is { Checks.IsEmpty: false } barred
        ? barred
        : null;

    // A case is not left to others before what can be done safely is done.
    private static PlannedStep NotLeft(Plan plan) => !IsHandOver(plan.Step)
        ? plan.Step
        : plan.Options.Select(option => option.Step).OfType<PlannedStep.DoCheck>().FirstOrDefault() ?? plan.Step;

    private static double Price(WalkScene free, WalkScene safe, PlannedStep step) =>
        free.ExtraBefore(free.Plan.Step, step) is var extra && double.IsFinite(extra)
            ? extra
            : Math.Max(0, safe.Plan.Minutes - free.Plan.Minutes);

    /// <summary>The step under the rules.</summary>
    /// <param name="moves">Those made already.</param>
    internal LaidStep Laid(WalkScene scene, PlannedStep step, List<LaidMove> moves)
    {
        SortedSet<LaidRule> held = [];
        Lay(nearTies, scene, ref step, moves, held);
        foreach (IStepRule rule in once) Lay(rule, scene, ref step, moves, held);
        while (Lay(custom, scene, ref step, moves, held)) ;
        return new LaidStep(scene.Plan, step, [.. moves]) { HeldBack = [.. held] };
    }

    // What is come by is not asked before itself, whatever the pages say. A step that the plan did not weigh is none
    // that a limit holds back.
    private bool Lay(IStepRule rule, WalkScene scene, ref PlannedStep step, List<LaidMove> moves,
        SortedSet<LaidRule> held)
    {
        PlannedStep from = step;
        double most = Math.Max(library.Settings.LimitOf(rule.Name).Of(scene.Plan.Minutes), rule.Worth(from));
        foreach (PlannedStep to in rule.Instead(scene, from))
        {
            if (to == from) return false;
            double extra = rule.GoesBefore ? scene.ExtraBefore(from, to) : scene.Extra(from, to);
            if (extra > most && double.IsFinite(extra)) held.Add(rule.Name);
            if (extra > most || moves.Any(move => move.Rule == rule.Name && move.From == to)) continue;
            moves.Add(new LaidMove(rule.Name, from, to, extra));
            step = to;
            return true;
        }

        return false;
    }

    private static bool IsHandOver(PlannedStep step) =>
        step is PlannedStep.DoRepair repair && repair.Repair == RepairId.HandOver;
}
