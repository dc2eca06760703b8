using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using DxAssistant.Benchmarks.Planning;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Planning.Search;
using DxAssistant.Graph.Testability;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>
/// Ways of spending the planner's work, played on the same hidden units of the shipped content: what each costs a walk,
/// wrong parts at their price. <c>DX_WALKS</c> in the environment says how many units, <c>DX_SEED</c> where the draws
/// begin.
/// </summary>
internal sealed class SettingsGroup : IBenchmarkGroup
{
    private static readonly ImmutableArray<(string Name, LivePlanner Planner)> Ways =
    [
        ("as shipped", new LivePlanner()),
        ("the lower bound leads", new LivePlanner(LivePlanner.UsualWork, SearchSetting.Usual with { Leaning = 0 })),
        ("every check tried at successors",
            new LivePlanner(LivePlanner.UsualWork, SearchSetting.Usual with { Listed = 1000 })),
        ("both", new LivePlanner(LivePlanner.UsualWork, new SearchSetting(0, 1000))),
        ("an eighth of the work", new LivePlanner(LivePlanner.UsualWork / 8)),
        ("four times the work", new LivePlanner(LivePlanner.UsualWork * 4)),
    ];

    public string Name => "settings";

    public void Run(ResultFolder results)
    {
        int walks = Number("DX_WALKS", 400), seed = Number("DX_SEED", 1);
        var units = Units(walks, (ulong)seed);
        var minutes = Ways.Select(way => Play(units, way.Planner)).ToArray();
        results.Write("settings.md", Table(minutes, seed) + Least(units, minutes[0].Average()));
    }

    private static int Number(string name, int usual) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), CultureInfo.InvariantCulture, out var number)
            ? number
            : usual;

    private static ImmutableArray<HiddenUnit> Units(int count, ulong seed)
    {
        var cases = ShippedCases.All();
        var draws = new Draws(seed);
        return [.. Enumerable.Range(0, count)
            .Select(unit => new HiddenUnit(cases[(int)(draws.Next() % (ulong)cases.Length)], draws))];
    }

    private static double[] Play(ImmutableArray<HiddenUnit> units, IPlanner planner)
    {
        Dictionary<string, PlannedStep> known = [];
        return [.. units.Select(unit => unit.Minutes(planner, known))];
    }

    private static string Least(ImmutableArray<HiddenUnit> units, double shipped)
    {
        var least = units.GroupBy(unit => unit.Name)
            .Sum(same => same.Count() * Bound(same.First().Beginning)) / units.Length;
        return string.Create(CultureInfo.InvariantCulture,
            $"\nNo way of planning takes fewer than {least:0.0} minutes a walk on these cases: what is shipped takes at most {shipped / least:0.00} times the least.\n");
    }

    private static double Bound(SequencingProblem problem) =>
        new LivePlanner().Plan(problem, problem.Begin()).LowerBound;

    private static string Table(double[][] minutes, int seed)
    {
        var text = new StringBuilder("# Ways of spending the planner's work\n\n");
        text.Append(CultureInfo.InvariantCulture,
            $"{minutes[0].Length} hidden units of the shipped content, seed {seed}, each played with every way; made by `settings` of tests/Benchmarks. ");
        text.Append(
            "Minutes a walk, wrong parts at their price; the difference to what is shipped with its 95 % interval, "
                + "units paired.\n\n");
        text.Append("| way | minutes a walk | more than shipped | ± | in percent |\n|---|---:|---:|---:|---:|\n");
        for (var way = 0; way < minutes.Length; way++)
        {
            double[] more = [.. minutes[way].Zip(minutes[0], (ours, shipped) => ours - shipped)];
            double mean = more.Average(), spread =
                Math.Sqrt(more.Sum(each => (each - mean) * (each - mean)) / Math.Max(1, more.Length - 1));
            text.Append(CultureInfo.InvariantCulture,
                $"| {Ways[way].Name} | {minutes[way].Average():0.0} | {mean:+0.00;−0.00;0} | {1.96 * spread / Math.Sqrt(more.Length):0.00} | {100 * mean / minutes[0].Average():+0.0;−0.0;0} |\n");
        }

        return text.ToString();
    }
}
