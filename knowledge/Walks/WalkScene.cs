using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Knowledge.Walks;

/// <summary>A problem at its beginning with its plan: what the rules look at.</summary>
internal sealed class WalkScene(SequencingProblem problem, Plan plan, Role who)
{
    private readonly Dictionary<FaultId, double> shares = SharesOf(problem);

    public SequencingProblem Problem => problem;

    public Plan Plan => plan;

    public Role Who => who;

    /// <summary>Where the unit stands.</summary>
    public AccessId Here => problem.Access.Start;

    /// <summary>The faults in question, by id, with their probabilities.</summary>
    public IReadOnlyDictionary<FaultId, double> Shares => shares;

    /// <summary>0 for a fault that is not in question.</summary>
    public double ShareOf(FaultId fault) => shares.GetValueOrDefault(fault);

    /// <summary>
    /// A check that may be done and tells faults apart that are at least as likely; null when it is none.
    /// </summary>
    public Check? Open(CheckId id, double least = 0) =>
        problem.Checks.FirstOrDefault(check => check.Id == id) is { } check
        && check.Separates([.. shares.Where(fault => fault.Value >= least).Select(fault => fault.Key)])
            ? check
            : null;

    /// <summary>The access state nearest to where the unit stands in which a check may be done.</summary>
    public AccessId Nearest(Check check) => check.Access.MinBy(state => problem.Access.Minutes(Here, state));

    /// <summary>
    /// The likeliest of the faults that a repair cures, the first by id on a tie; null when it cures none in question.
    /// </summary>
    public FaultId? Likeliest(RepairId repair) => problem.Repairs.FirstOrDefault(each => each.Id == repair) is { } known
        ? known.Fixes.Order().Select(fault => (FaultId?)fault).MaxBy(fault => Math.Round(ShareOf(fault!.Value), 12))
        : null;

    /// <summary>
    /// Expected minutes that a step takes more than another, as the plan reckons; infinite when it did not weigh one of
    /// them.
    /// </summary>
    public double Extra(PlannedStep from, PlannedStep to) =>
        Planned(from) is { } old && Planned(to) is { } next ? Math.Max(0, next - old) : double.PositiveInfinity;

    /// <summary>The most expected minutes that a step costs when the other is done after it.</summary>
    /// <remarks>
    /// What the plan reckons, or the check's own minutes and the detour to it when they are less: whatever was to be
    /// done can be done afterwards, and to know more costs nothing.
    /// </remarks>
    public double ExtraBefore(PlannedStep from, PlannedStep to) => to is PlannedStep.DoCheck check
        ? Math.Min(Extra(from, to), MinutesOf(check.Check) + Detour(check.Access, AccessOf(from)))
        : Extra(from, to);

    /// <summary>How long a check of the problem takes once the unit stands ready.</summary>
    public double MinutesOf(CheckId id) => problem.Checks.First(check => check.Id == id).Minutes;

    private double Detour(AccessId through, AccessId there) =>
        problem.Access.Minutes(Here, through)
            + problem.Access.Minutes(through, there) - problem.Access.Minutes(Here, there);

    private AccessId AccessOf(PlannedStep step) => step switch
    {
        PlannedStep.DoCheck check => check.Access,
        PlannedStep.DoRepair repair => repair.Access,
        _ => Here,
    };

    private double? Planned(PlannedStep step) => plan.Options.FirstOrDefault(option => option.Step == step)?.Minutes;

    private static Dictionary<FaultId, double> SharesOf(SequencingProblem problem)
    {
        double all = problem.Faults.Sum(fault => fault.Weight);
        return problem.Faults.ToDictionary(fault => fault.Id, fault => fault.Weight / all);
    }
}
