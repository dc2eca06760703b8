using System.Collections.Immutable;
using DxAssistant.Graph.Planning.Search;

namespace DxAssistant.Graph.Planning;

/// <summary>What conversations use: as exact as a fixed amount of work allows, the same on every machine.</summary>
/// <param name="work">
/// Positions to weigh, times the faults × (checks + repairs) that weighing one goes through; above 0. A large problem
/// gets less of it. At least the steps possible now are weighed, one move ahead.
/// </param>
public sealed class LivePlanner(int work = LivePlanner.UsualWork) : IPlanner
{
    /// <summary>
    /// Exact with half a dozen faults and noisy checks, or a dozen and clean ones; some moves ahead with 40 faults
    /// and 60 checks. Some milliseconds.
    /// </summary>
    public const int UsualWork = 2_000_000;

    // In small problems the rest of the work done for a position outweighs the faults and checks.
    private const int LeastSize = 160;

    // What the search of a large problem finds, it finds soon: a thousand positions, and fewer of the largest, end in
    // walks as short as four times as many (tests/Benchmarks/results/settings.md).
    private const int LeastLargeSize = 1_000, LargeShare = 2;

    private readonly SearchSetting setting = SearchSetting.Usual;
    private readonly int work =
        work > 0 ? work : throw new ArgumentOutOfRangeException(nameof(work), work, "must be above 0");

    internal LivePlanner(int work, SearchSetting setting) : this(work) => this.setting = setting;

    public Plan Plan(SequencingProblem problem, Position position)
    {
        BoundedSearch search = Searched(problem, position);
        Plan plan = PlanReport.Of(problem, search);
        search.GiveBack();
        return plan;
    }

    /// <summary>
    /// What can be done, the best first: the options of the plan, without the work for the bound that it gives.
    /// </summary>
    public ImmutableArray<PlanOption> Rank(SequencingProblem problem, Position position)
    {
        BoundedSearch search = Searched(problem, position);
        ImmutableArray<PlanOption> ranked = PlanReport.Ranked(problem, search);
        search.GiveBack();
        return ranked;
    }

    /// <summary>Positions of a problem that may be weighed for so much work.</summary>
    internal static int WorkFor(SequencingProblem problem, int work) => problem.IsLarge
        ? work / LargeShare / Math.Max(LeastLargeSize, problem.Size)
        : work / Math.Max(LeastSize, problem.Size);

    public PlannedStep Next(SequencingProblem problem, Position position) =>
        Rank(problem, position) is { IsEmpty: false } ranked ? ranked[0].Step : new PlannedStep.Nothing();

    private BoundedSearch Searched(SequencingProblem problem, Position position)
    {
        BoundedSearch search = new(problem, position, setting);
        search.Run(WorkFor(problem, work));
        return search;
    }
}
