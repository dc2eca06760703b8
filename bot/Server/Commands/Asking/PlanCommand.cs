using System.CommandLine;
using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Server.Commands.Asking;

/// <summary><c>plan</c>: the next step of a sequencing problem at a position of its walk, and what the policy costs
/// from there.</summary>
internal static class PlanCommand
{
    public static Command Make(Streams streams)
    {
        var plan = new Command(
            "plan",
            """JSON Lines: a sequencing problem with "mode": exact or live, and optionally "seen", "excluded", "state".""");
        plan.Add(PlanCompare.Make(streams));
        plan.SetAction((_, cancel) => JsonLines.RunAsync(streams, Answer, cancel));
        return plan;
    }

    internal static JsonObject Answer(JsonElement request)
    {
        try
        {
            var problem = PlanRequest.Problem(request);
            var position = PlanPosition.Read(request, problem);
            return Shown(Request.OptionalText(request, "id"), Planner(request), problem, position);
        }
        catch (ArgumentException error)
        {
            throw new RequestException(error.Message.Split(" (Parameter")[0], error);
        }
    }

    private static IPlanner Planner(JsonElement request) => Request.OptionalText(request, "mode") switch
    {
        null or "live" => new LivePlanner(),
        "exact" => new ExactPlanner(),
        var mode => throw new RequestException($"\"mode\" is exact or live, not {mode}"),
    };

    private static JsonObject Shown(string? id, IPlanner planner, SequencingProblem problem, Position position)
    {
        var plan = planner.Plan(problem, position);
        var (action, access) = plan.Step switch
        {
            PlannedStep.DoCheck step => (step.Check.Value, step.Access.Value),
            PlannedStep.DoRepair step => (step.Repair.Value, step.Access.Value),
            _ => (null, (string?)null),
        };

        // The plan of an exact planner is followed to the end: its minutes are the cost of its policy.
        double policyCost = planner is ExactPlanner && plan.IsExact
            ? plan.Minutes
            : new PolicyEvaluator(problem, planner, MostPositions(problem)).Minutes(position);
        return new JsonObject
        {
            ["id"] = id,
            ["action"] = action,
            ["access"] = access,
            ["firstAction"] = action,
            ["expectedCost"] = plan.Minutes,
            ["policyCost"] = double.IsNaN(policyCost) ? null : policyCost,
            ["lowerBound"] = plan.LowerBound,
            ["exact"] = plan.IsExact,
        };
    }

    // Going through everything that can happen takes for ever with dozens of noisy checks: then the cost is null.
    private static int MostPositions(SequencingProblem problem) => Math.Clamp(4_000_000 / problem.Size, 300, 50_000);
}
