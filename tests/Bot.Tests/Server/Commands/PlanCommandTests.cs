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

    // Each names what is wrong, in one line, and never more than an error of that line.
    [Theory]
    [InlineData("\"prior\":0.5", "\"prior\":0.4", "the priors sum to 0.8, not to 1")]
    [InlineData("\"prior\":0.5", "\"prior\":-0.5", "the prior of fault f1 must be a number from 0 to 1, not -0.5")]
    [InlineData("\"prior\":0.5", "\"prior\":1e999", "the prior of fault f1 must be a number from 0 to 1, not 1e999")]
    [InlineData("\"prior\":0.5", "\"prior\":\"NaN\"",
        "the prior of fault f1 must be a number from 0 to 1, not \"NaN\"")]
    [InlineData("\"cost\":3", "\"cost\":-3", "the cost of check c1 must be a number from 0 to 1000000000, not -3")]
    [InlineData("\"cost\":3", "\"cost\":1e308",
        "the cost of check c1 must be a number from 0 to 1000000000, not 1e308")]
    [InlineData("\"cost\":9", "\"cost\":null", "the cost of repair r1 must be a number from 0 to 1000000000, not null")]
    [InlineData("[[0,5],[5,0]]", "[[0,5],[-5,0]]",
        "the transitionCost from b to a must be a number from 0 to 1000000000, not -5")]
    [InlineData("[[0,5],[5,0]]", "[[1,5],[5,0]]", "the transitionCost from a to itself must be 0")]
    [InlineData("[[0,5],[5,0]]", "[[0,5]]", "\"transitionCost\" must be 2 rows of 2 numbers")]
    [InlineData("\"fail\":0.9", "\"fail\":0.8", "the likelihoods of check c1 given fault f1 do not sum to 1")]
    [InlineData("\"fail\":0.9", "\"nail\":0.9", "check c1 has no outcome nail")]
    [InlineData("\"likelihood\":{\"f1\"", "\"likelihood\":{\"f9\"", "check c1: there is no fault f9")]
    [InlineData("\"fixes\":[\"f1\"]", "\"fixes\":[\"f9\"]", "repair r1: there is no fault f9")]
    [InlineData("\"fixes\":[\"f1\"]", "\"fixes\":[1]", "1 must be a string")]
    [InlineData("\"seen\":[]",
        "\"seen\":[{\"check\":\"c1\",\"outcome\":\"pass\"},{\"check\":\"c1\",\"outcome\":\"pass\"}]",
        "\"seen\": check c1 is there twice")]
    [InlineData("\"seen\":[]", "\"seen\":[{\"check\":\"c2\",\"outcome\":\"third\"}]",
        "check c2 cannot show third here")]
    [InlineData("\"seen\":[]", "\"seen\":[{\"check\":\"c9\",\"outcome\":\"pass\"}]", "the problem has no check c9")]
    [InlineData("\"startState\":\"a\"", "\"startState\":\"z\"", "there is no access state z")]
    public async Task Plan_PartOutOfItsRange_IsSaidInOneLine(string right, string wrong, string message)
    {
        const string sound = """
            {"id":"x","accessStates":["a","b"],"transitionCost":[[0,5],[5,0]],"startState":"a","verifyState":null,"faults":[{"id":"f1","prior":0.5},{"id":"f2","prior":0.5}],"checks":[{"id":"c1","cost":3,"access":["a"],"outcomes":["pass","fail"],"likelihood":{"f1":{"pass":0.1,"fail":0.9},"f2":{"pass":1,"fail":0}}},{"id":"c2","cost":1,"access":["a"],"outcomes":["first","second","third"],"likelihood":{"f1":{"first":1,"second":0,"third":0},"f2":{"first":0.5,"second":0.5,"third":0}}}],"repairs":[{"id":"r1","cost":9,"verifyCost":1,"access":["b"],"fixes":["f1"]},{"id":"r2","cost":8,"verifyCost":1,"access":["a"],"fixes":["f2"]}],"seen":[]}
            """;
        Assert.Contains(right, sound, StringComparison.Ordinal);

        var good = await Run.OfAsync(sound, "plan");
        var bad = await Run.OfAsync(sound.Replace(right, wrong, StringComparison.Ordinal), "plan");

        Assert.Equal(0, good.Code);
        Assert.Equal(1, bad.Code);
        Assert.Equal(message, bad.Json[0].GetProperty("error").GetString());
    }

    [Fact]
    public async Task Plan_DetourThatPays_IsRefused()
    {
        var asked = SequencingFile.Asked(SequencingFile.Problem("s-access-03"), "live");
        asked["transitionCost"] = JsonNode.Parse("[[0,90,3],[5,0,4],[3,12,0]]");

        var run = await Run.OfAsync(asked.ToJsonString(), "plan");

        Assert.Contains("a detour must not pay", run.Json[0].GetProperty("error")
            .GetString(), StringComparison.Ordinal);
    }

    // 30 faults, 40 noisy checks: nobody can go through all that can happen, and the answer says so.
    [Fact]
    public async Task Plan_ProblemTooLargeToGoThrough_HasNoPolicyCostButBounds()
    {
        var run = await Run.OfAsync(SequencingFile.Noisy(faults: 30, checks: 40).ToJsonString(), "plan");

        var answer = run.Json[0];
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("policyCost").ValueKind);
        Assert.InRange(
            answer.GetProperty("lowerBound").GetDouble(), 1, answer.GetProperty("expectedCost").GetDouble());
    }

    [Fact]
    public async Task Compare_ReferenceFile_ShowsEveryTypeAndThePublishedValues()
    {
        string file = SequencingFile.WithFirst(problems: 8);
        try
        {
            var run = await Run.OfAsync("", "plan", "compare", file);

            Assert.Equal(0, run.Code);
            Assert.Contains("| published | 6 | 1.0000 / 1.000 | 1.0000 / 1.000 |", run.Output,
                StringComparison.Ordinal);
            Assert.Contains("| perfect | 2 |", run.Output, StringComparison.Ordinal);
            Assert.Contains("| thm-cost-cluster-inside-information | 21.95 | 21.95 |", run.Output,
                StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact]
    public async Task Compare_NoSuchFile_IsAWrongCall() =>
        Assert.Equal(2, (await Run.OfAsync("", "plan", "compare", "no-such-file.json")).Code);

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
