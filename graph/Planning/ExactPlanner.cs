using DxAssistant.Graph.Planning.Search;

namespace DxAssistant.Graph.Planning;

/// <summary>The least expected minutes of a problem, and of each way to begin.</summary>
/// <param name="workLimit">
/// Most positions to weigh; above 0. When they do not suffice, the plan is not exact and says so: its bounds are
/// still true.
/// </param>
public sealed class ExactPlanner(int workLimit = ExactPlanner.UsualWorkLimit) : IPlanner
{
    /// <summary>Takes some 200 MB and some seconds with ten faults.</summary>
    public const int UsualWorkLimit = 2_000_000;

    // Positions × faults × (checks + repairs): what fits into a gigabyte or so.
    private const int MostWork = 1_500_000_000;

    private readonly int workLimit =
        workLimit > 0
            ? workLimit
            : throw new ArgumentOutOfRangeException(nameof(workLimit), workLimit, "must be above 0");

    public Plan Plan(SequencingProblem problem, Position position)
    {
        BoundedSearch search = new(problem, position);
        search.Run(WorkFor(problem));
        search.RunAllActions(WorkFor(problem));
        return PlanReport.Of(problem, search);
    }

    public PlannedStep Next(SequencingProblem problem, Position position)
    {
        BoundedSearch search = new(problem, position);
        search.Run(WorkFor(problem));
        return PlanReport.Of(problem, search).Step;
    }

    private int WorkFor(SequencingProblem problem) => Math.Min(workLimit, MostWork / Math.Max(1, problem.Size));
}
