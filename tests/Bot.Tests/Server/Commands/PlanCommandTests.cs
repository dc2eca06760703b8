using System.Text.Json;
using System.Text.Json.Nodes;

namespace DxAssistant.Bot.Tests.Server.Commands;

/// <summary>Sources: Pattipati and Alexandridis 1990 (2.18), Ottosen and Jensen 2008 (1.45), and the others in
/// tests/Reference/sequencing.md.</summary>
public sealed class PlanCommandTests
{
    [Theory]
    [InlineData("pub-pattipati-alexandridis-1990", 2.18)]
    [InlineData("pub-dependent-actions", 1.45)]
    [InlineData("s-access-01", 76.561429496)]
    public async Task Plan_Exact_GivesTheKnownOptimumAndAFirstActionThatReachesIt(string id, double optimum)
    {
        var problem = SequencingFile.Problem(id);

        var run = await Run.OfAsync(SequencingFile.Asked(problem, "exact").ToJsonString(), "plan");

        var answer = run.Json[0];
        Assert.Equal(0, run.Code);
        Assert.Equal(id, answer.GetProperty("id").GetString());
        Assert.Equal(optimum, answer.GetProperty("expectedCost").GetDouble(), tolerance: 1e-9);
        Assert.Contains(
            answer.GetProperty("firstAction").GetString(), problem["optimal"]!["tiedFirstActions"]!.AsArray()
            .Select(a => (string)a!));
    }

    [Theory]
    [InlineData("pub-dependent-actions")]
    [InlineData("s-access-01")]
    public async Task Plan_Live_PolicyCostIsWhatDrivingTheWalkCosts(string id)
    {
        var problem = SequencingFile.Problem(id);

        var (answer, driven) = await DriveAsync(problem, [], [], (string)problem["startState"]!);

        Assert.Equal(driven, answer.GetProperty("policyCost").GetDouble(), tolerance: 1e-9);
    }

    [Theory]
    [InlineData("""{"id":"x"}""")]
    [InlineData(
        """{"id":"x","accessStates":["any"],"transitionCost":[[0]],"startState":"nowhere","faults":[{"id":"f","prior":1}],"checks":[],"repairs":[]}""")]
    [InlineData(
        """{"id":"x","accessStates":["any"],"transitionCost":[],"startState":"any","faults":[{"id":"f","prior":1}],"checks":[],"repairs":[]}""")]
    [InlineData(
        """{"id":"x","accessStates":["any"],"transitionCost":[[0]],"startState":"any","faults":[{"id":"f","prior":1}],"checks":[],"repairs":[]}""")]
    [InlineData(
        """{"id":"x","accessStates":"any","transitionCost":[[0]],"startState":"any","faults":[],"checks":[],"repairs":[]}""")]
    public async Task Plan_ProblemThatDoesNotFitTogether_IsAnErrorOfThatLine(string request)
    {
        var run = await Run.OfAsync(request, "plan");

        Assert.Equal(1, run.Code);
        Assert.Equal("x", run.Json[0].GetProperty("id").GetString());
        Assert.NotEmpty(run.Json[0].GetProperty("error").GetString()!);
    }

    [Theory]
    [InlineData("mode", "\"fast\"")]
    [InlineData("state", "\"nowhere\"")]
    [InlineData("excluded", "[\"f1\",\"f2\",\"f3\",\"f4\"]")]
    [InlineData("excluded", "[\"f9\"]")]
    [InlineData("seen", "[{\"check\":\"c9\",\"outcome\":\"low\"}]")]
    public async Task Plan_PositionThatCannotBe_IsAnErrorOfThatLine(string part, string value)
    {
        var asked = SequencingFile.Asked(SequencingFile.Problem("s-access-01"), "live");
        asked[part] = JsonNode.Parse(value);

        Assert.Equal(1, (await Run.OfAsync(asked.ToJsonString(), "plan")).Code);
    }

    /// <summary>Asks for one step, pays for it, and drives on for each thing that can happen.</summary>
    private static async Task<(JsonElement Answer, double Cost)> DriveAsync(
        JsonObject problem, JsonArray seen, HashSet<string> excluded, string state)
    {
        var asked = SequencingFile.Asked(problem, "live");
        asked["seen"] = seen.DeepClone();
        asked["excluded"] = new JsonArray([.. excluded.Order(StringComparer.Ordinal).Select(f => (JsonNode)f)]);
        asked["state"] = state;
        var answer = (await Run.OfAsync(asked.ToJsonString(), "plan")).Json[0];
        string action = answer.GetProperty("action").GetString()!, access = answer.GetProperty("access").GetString()!;
        double cost = Travel(problem, state, access);
        return problem["checks"]!.AsArray().FirstOrDefault(c => (string)c!["id"]! == action) is JsonObject check
            ? (answer, cost + await AfterCheckAsync(problem, check, seen, excluded, access))
            : (answer, cost + await AfterRepairAsync(problem, action, seen, excluded, access));
    }

    private static async Task<double> AfterCheckAsync(
        JsonObject problem, JsonObject check, JsonArray seen, HashSet<string> excluded, string access)
    {
        double cost = (double)check["cost"]!, before = Mass(problem, seen, excluded);
        foreach (var outcome in check["outcomes"]!.AsArray())
        {
            var then = (JsonArray)seen.DeepClone();
            then.Add(new JsonObject { ["check"] = (string)check["id"]!, ["outcome"] = (string)outcome! });
            double share = Mass(problem, then, excluded) / before;
            if (share > 0) cost += share * (await DriveAsync(problem, then, excluded, access)).Cost;
        }

        return cost;
    }

    private static async Task<double> AfterRepairAsync(
        JsonObject problem, string action, JsonArray seen, HashSet<string> excluded, string access)
    {
        var repair = problem["repairs"]!.AsArray().First(r => (string)r!["id"]! == action)!;
        string after = (string?)problem["verifyState"] ?? access;
        double cost = (double)repair["cost"]! + (double)repair["verifyCost"]! + Travel(problem, access, after);
        HashSet<string> then = [.. excluded, .. repair["fixes"]!.AsArray().Select(f => (string)f!)];
        double share = Mass(problem, seen, then) / Mass(problem, seen, excluded);
        return share > 0 ? cost + share * (await DriveAsync(problem, seen, then, after)).Cost : cost;
    }

    private static double Mass(JsonObject problem, JsonArray seen, HashSet<string> excluded) =>
        problem["faults"]!.AsArray()
        .Where(f => !excluded.Contains((string)f!["id"]!))
        .Sum(f => seen.Aggregate(
            (double)f!["prior"]!, (weight, s) => weight * Likelihood(problem, s!, (string)f["id"]!)));

    private static double Likelihood(JsonObject problem, JsonNode seen, string fault) =>
        (double)problem["checks"]!.AsArray()
        .First(c => (string)c!["id"]! == (string)seen["check"]!)!["likelihood"]![fault]![(string)seen["outcome"]!]!;

    private static double Travel(JsonObject problem, string from, string to)
    {
        var states = problem["accessStates"]!.AsArray().Select(s => (string)s!).ToList();
        return (double)problem["transitionCost"]![states.IndexOf(from)]![states.IndexOf(to)]!;
    }
}
