using System.Collections.Immutable;
using System.Text.Json;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Planning.Baselines;
using DxAssistant.Server.Commands.Asking;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary>One problem and what each way of planning costs on it, in expected minutes.</summary>
/// <param name="Published">The optimum in print or in closed form; null when there is none.</param>
/// <param name="Optimum">As the file says; the exact planner's when it says nothing.</param>
/// <param name="Minutes">In the order of <see cref="Ways"/>; null where a way has no meaning.</param>
internal sealed record ComparedProblem(
    string Id, string Type, double? Published, string? Source, double Optimum, ImmutableArray<double?> Minutes)
{
    private const double Tolerance = 1e-9;

    /// <summary>The ways of planning; the simple policies by their names in tests/Reference/sequencing.md.</summary>
    public static ImmutableArray<string> Ways { get; } =
        ["exact", "live", "rollout", "ecoMyopic", "infoGainPerCost", "cheapestFirst", "fixedOrder", "repairOnly"];

    public bool MissesTheOptimum => Math.Abs(Minutes[0]!.Value - Optimum) > Tolerance;

    /// <summary>Minutes of a way over the optimum; 1 when there is nothing to do.</summary>
    public double? Ratio(int way) => Optimum > 0 ? Minutes[way] / Optimum : 1;

    /// <exception cref="RequestException">A part is missing, of the wrong type or out of its range.</exception>
    public static ComparedProblem Of(JsonElement instance)
    {
        SequencingProblem problem = PlanRequest.Problem(instance);
        double?[] minutes = [.. Ways.Select(way => Reckon(way, problem))];
        bool known = instance.TryGetProperty("optimal", out JsonElement optimal);
        return new ComparedProblem(
            Request.Text(instance, "id"), Request.OptionalText(instance, "type") ?? "problem",
            instance.TryGetProperty("publishedValue", out JsonElement published)
                && published.ValueKind == JsonValueKind.Number
                ? published.GetDouble() : null,
            Request.OptionalText(instance, "source"),
            known ? Request.Number(optimal, "expectedCost") : minutes[0]!.Value, [.. minutes]);
    }

    private static double? Reckon(string way, SequencingProblem problem)
    {
        if (way is "ecoMyopic" or "repairOnly" && problem.Objective == Objective.Isolate) return null;
        return way == "exact"
            ? new ExactPlanner().Plan(problem, problem.Begin()).Minutes
            : new PolicyEvaluator(problem, Policy(way)).Minutes(problem.Begin());
    }

    private static IPolicy Policy(string way) => way switch
    {
        "live" => new LivePlanner(),
        "rollout" => new Rollout(),
        "ecoMyopic" => new EcoMyopic(),
        "infoGainPerCost" => new InfoGainPerCost(),
        "cheapestFirst" => new CheapestFirst(),
        "fixedOrder" => new FixedOrder(),
        _ => new RepairOnly(),
    };
}
