using System.Globalization;
using System.Text;
using DxAssistant.Benchmarks.Planning;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Planning.Search;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>
/// How far the plans of the shipped symptoms are known to be from the best possible: by the search alone, and by the
/// doubt there is.
/// </summary>
internal sealed class BoundsGroup : IBenchmarkGroup
{
    public string Name => "bounds";

    public void Run(ResultFolder results)
    {
        var planner = new LivePlanner();
        var rows = new StringBuilder();
        List<(double Before, double After)> gaps = [];
        foreach (var begun in ShippedCases.All())
        {
            if (begun.After([], begun.Situation.Access) is not { } problem) continue;
            var plan = planner.Plan(problem, problem.Begin());
            var searched = Searched(problem);
            gaps.Add((plan.Minutes / searched, plan.Minutes / plan.LowerBound));
            rows.Append(CultureInfo.InvariantCulture,
                $"| {begun.Name} | {problem.Faults.Length} | {problem.Checks.Length} | {plan.Minutes:0.0} | {searched:0.0} | {plan.LowerBound:0.0} | {gaps[^1].Before:0.00} | {gaps[^1].After:0.00} |\n");
        }

        results.Write("bounds.md", Table(gaps, rows));
    }

    // What the search knows by itself with the same work.
    private static double Searched(SequencingProblem problem)
    {
        BoundedSearch search = new(problem, problem.Begin());
        search.Run(LivePlanner.WorkFor(problem, LivePlanner.UsualWork));
        return search.Lower(search.Root);
    }

    private static string Table(List<(double Before, double After)> gaps, StringBuilder rows)
    {
        var text = new StringBuilder("# How near the best possible plans are known to be\n\n");
        text.Append(
            "First plans of every symptom of every shipped series; made by `bounds` of tests/Benchmarks. Minutes with "
                + "wrong parts at their price. ");
        text.Append(
            "At most: the plan's expected minutes. At least: no plan takes fewer, by the search alone and with the "
                + "price of the doubt. Their quotients say by how much at most a plan could be better.\n\n");
        text.Append(CultureInfo.InvariantCulture,
            $"Mean quotient {gaps.Average(gap => gap.Before):0.000} by the search alone, {gaps.Average(gap => gap.After):0.000} with the doubt; largest {gaps.Max(gap => gap.Before):0.00} and {gaps.Max(gap => gap.After):0.00}.\n\n");
        text.Append(
            "| symptom | faults | checks | at most | at least, search | at least, doubt | quotient, search | quotient, "
                + "doubt |\n");
        return text.Append("|---|---:|---:|---:|---:|---:|---:|---:|\n").Append(rows).ToString();
    }
}
