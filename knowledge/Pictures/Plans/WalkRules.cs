using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Planning.Trees;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>The plan under the rules by which a conversation takes its steps.</summary>
/// <remarks>
/// Between checks whose plans take nearly the same minutes the one least in the way; first what by custom comes before
/// it; a part is changed only after the checks that its proof links to. A printed walk knows no answers but its own, so
/// what a conversation makes of doubts and of "cannot do that here" is not in it.
/// </remarks>
/// <param name="work">The planner's work for the first step; steps that fewer walks come to get less.</param>
internal sealed class WalkRules(Library library, SequencingProblem problem, int work)
{
    // As the conversation has them; common practice, no source.
    private const double NearMinutes = 1, NearShare = 0.01, InEarnest = 0.02;

    // Full work where a quarter of all walks come by, and never less than an eighth of it.
    private const double FullShare = 0.25, LeastWork = 0.125;

    private readonly double everything = problem.Begin().Weights.Sum();

    /// <summary>What is done at a position.</summary>
    public TreeStep Next(Position here) => TreeStep.Of(Best(here) switch
    {
        PlannedStep.DoCheck step => Before(here, step, [step.Check]) ?? step,
        PlannedStep.DoRepair step when Proof(here, step.Repair) is { } proof => new PlannedStep.DoCheck(proof, Nearest(here, proof)),
        var step => step,
    });

    /// <summary>The check that must come before a repair; null when the repair may be done.</summary>
    public CheckId? Proof(Position here, RepairId repair)
    {
        if (!library.Repairs.TryGetValue(repair, out RepairPage? page) || page.Parts.IsEmpty) return null;
        FaultId likeliest = problem.Repairs.First(each => each.Id == repair).Fixes
            .Where(fault => problem.Faults.Any(each => each.Id == fault))
            .MaxBy(fault => Math.Round(here.ProbabilityOf(fault), 9));
        return library.Faults[likeliest].Demanded.Select(id => (CheckId?)id).FirstOrDefault(id => IsOpen(here, id!.Value, 0));
    }

    private PlannedStep Best(Position here)
    {
        ImmutableArray<PlanOption> options = PlannerAt(here).Rank(problem, here);
        if (options.IsEmpty || options[0].Step is not PlannedStep.DoCheck) return options.IsEmpty ? new PlannedStep.Nothing() : options[0].Step;
        double most = options[0].Minutes + Math.Max(NearMinutes, NearShare * options[0].Minutes);
        return options.Where(option => option.Minutes <= most).Select(option => option.Step).OfType<PlannedStep.DoCheck>()
            .MinBy(step => (problem.Access.Minutes(here.Access, step.Access), library.Checks[step.Check].Calculation is not null))!;
    }

    private LivePlanner PlannerAt(Position here) =>
        new(Math.Max(1, (int)(work * Math.Clamp(here.Weights.Sum() / everything / FullShare, LeastWork, 1))));

    private PlannedStep.DoCheck? Before(Position here, PlannedStep.DoCheck step, HashSet<CheckId> comeBy)
    {
        foreach (CheckId id in library.Checks[step.Check].After)
            if (!comeBy.Contains(id) && IsOpen(here, id, InEarnest) && OnTheWay(here, id, step) is { } access)
            {
                comeBy.Add(id);
                PlannedStep.DoCheck before = new(id, access);
                return Before(here, before, comeBy) ?? before;
            }

        return null;
    }

    // It can be done here, has not been, and tells faults apart that are as likely as that.
    private bool IsOpen(Position here, CheckId id, double least) =>
        problem.Checks.FirstOrDefault(each => each.Id == id) is { } check && !here.IsUsed(id)
        && check.Separates([.. problem.Faults.Select(fault => fault.Id)
            .Where(fault => here.ProbabilityOf(fault) is > 0 and var likely && likely >= least)]);

    private AccessId? OnTheWay(Position here, CheckId id, PlannedStep.DoCheck step)
    {
        double way = problem.Access.Minutes(here.Access, step.Access);
        return Access(id).Where(state => problem.Access.Minutes(here.Access, state) + problem.Access.Minutes(state, step.Access) <= way)
            .OrderBy(state => problem.Access.Minutes(here.Access, state)).Select(state => (AccessId?)state).FirstOrDefault();
    }

    private AccessId Nearest(Position here, CheckId id) => Access(id).MinBy(state => problem.Access.Minutes(here.Access, state));

    private IEnumerable<AccessId> Access(CheckId id) => problem.Checks.First(each => each.Id == id).Access.Where(problem.Access.Contains);
}
