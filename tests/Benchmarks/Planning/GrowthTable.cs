using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using DxAssistant.Benchmarks.Ratios;

namespace DxAssistant.Benchmarks.Planning;

/// <summary>The growth of planning as a Markdown table.</summary>
internal static class GrowthTable
{
    public static string Text(ImmutableArray<GrowthPoint> points, Figure baseline)
    {
        var text = new StringBuilder("# Cost of one plan as the problem grows\n\n");
        text.Append(
            CultureInfo.InvariantCulture,
            $"Baseline, 1×: {baseline.Name} ({baseline.Nanoseconds / 1000:0.0} µs on this machine in this run). ");
        text.Append("Noisy checks, five access states; made by `planner` of tests/Benchmarks. ");
        text.Append("\"At most\" is the plan's expected minutes over its lower bound: no plan is better by more.\n\n");
        text.Append("![Times the baseline against faults](planner.svg)\n\n");
        text.Append(
            "| faults | checks | times the baseline | ± | ms in this run | allocated, kB | positions weighed | at "
                + "most |\n");
        text.Append("|---:|---:|---:|---:|---:|---:|---:|---:|\n");
        foreach (var point in points)
            Row(text, point, baseline);
        return text.ToString();
    }

    private static void Row(StringBuilder text, GrowthPoint point, Figure baseline) => text.Append(
        CultureInfo.InvariantCulture,
        $"| {point.Faults} | {point.Problem.Checks.Length} | {point.Cost.Nanoseconds / baseline.Nanoseconds:#,##0} | "
        + $"{100 * point.Cost.ErrorNanoseconds / point.Cost.Nanoseconds:0} % | {point.Cost.Nanoseconds / 1e6:0.0} | "
        + $"{point.Cost.AllocatedBytes / 1000:#,##0} | {point.Plan.Work:#,##0} | {point.Plan.Minutes / point.Plan.LowerBound:0.00} |\n");
}
