using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Benchmarks.Planning;
using DxAssistant.Benchmarks.Ratios;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>One plan as conversations make it, from 5 faults to 200: the problem's tables and the search.</summary>
internal sealed class PlannerGroup : IBenchmarkGroup
{
    private static readonly ImmutableArray<int> Sizes = [5, 10, 20, 40, 80, 140, 200];

    public string Name => "planner";

    public void Run(ResultFolder results)
    {
        var bayes = new PlainBayes();
        var planner = new LivePlanner();
        ImmutableArray<SequencingProblem> problems = [.. Sizes.Select(GrowingProblem.Of)];
        var figures = RatioRun.Of(
            [new Workload("60 checks weighed once over 40 faults by plain loops", bayes.Run),
                .. problems.Select(problem => Work(planner, problem))],
            results);
        ImmutableArray<GrowthPoint> points =
        [
            .. problems.Select((problem, place) => new GrowthPoint(
                Sizes[place], problem, planner.Plan(problem, problem.Begin()), figures[place + 1])),
        ];
        results.Write("planner.md", GrowthTable.Text(points, figures[0]));
        results.Write("planner.svg", GrowthChart.Svg(points, figures[0]));
    }

    // The tables are made anew for every step of a case, so they are part of its cost.
    private static Workload Work(LivePlanner planner, SequencingProblem problem) => new(
        string.Create(CultureInfo.InvariantCulture, $"{problem.Faults.Length} faults"),
        () =>
        {
            var made = new SequencingProblem(problem.Objective, problem.Faults, problem.Checks, problem.Repairs,
                problem.Access);
            return planner.Plan(made, made.Begin());
        });
}
