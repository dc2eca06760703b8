using System.Text.Json;

namespace DxAssistant.Bot.Tests.Server.Commands;

public sealed class ContentStatsTests
{
    private static readonly string Tiny = SourceFolder.Find("tests/Knowledge.Tests/Content/Tiny");

    [Fact]
    public async Task Stats_TinyPages_GivesFiguresOfEverySymptomAndOverall()
    {
        var run = await Run.OfAsync("", "content", "stats", Tiny, "--walks", "40");

        Assert.Equal(0, run.Code);
        Assert.Contains("## alder-one", run.Output, StringComparison.Ordinal);
        Assert.Contains("| fan-not-turning | 3 |", run.Output, StringComparison.Ordinal);
        Assert.Contains("| all, as often as met |", run.Output, StringComparison.Ordinal);
        Assert.Contains("Faults that no check tells apart:", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Stats_Json_BoundsHoldTheMinutes()
    {
        var run = await Run.OfAsync("", "content", "stats", Tiny, "--json", "--trade");

        var overall = run.Json[0].GetProperty("series")[0].GetProperty("overall");
        Assert.InRange(
            overall.GetProperty("leastMinutes").GetDouble(), 1, overall.GetProperty("pricedMinutes").GetDouble());
        Assert.Equal(5, run.Json[0].GetProperty("trade").GetArrayLength());
        JsonElement[] prices = [.. run.Json[0].GetProperty("trade").EnumerateArray()];
        double At(int place, string name) => prices[place].GetProperty(name).GetProperty("value").GetDouble();
        Assert.InRange(At(4, "partsInVain"), 0, At(0, "partsInVain"));
        Assert.InRange(At(0, "minutes"), 1, At(4, "minutes"));
        Assert.Equal((0, 0), (At(2, "minutesMore"), At(2, "partsSaved")));
        Assert.Equal(JsonValueKind.Object, overall.GetProperty("walks").GetProperty("repairsInVain").ValueKind);
    }

    [Fact]
    public async Task Stats_RulesOverThePlan_SaysTheirCostAndTheWorkOfConversations()
    {
        var run = await Run.OfAsync("", "content", "stats", Tiny, "--json", "--walks", "10");

        Assert.Equal(run.Json[0].GetProperty("conversationWork").GetInt32(), run.Json[0].GetProperty("work")
            .GetInt32());
        JsonElement symptom = run.Json[0].GetProperty("series")[0].GetProperty("symptoms")[0];
        JsonElement laid = symptom.GetProperty("laid");
        double Value(string name) => laid.GetProperty(name).GetProperty("value").GetDouble();
        Assert.Equal(Value("pricedMinutes") - Value("planAlone"), Value("cost"), 1e-9);
        Assert.Contains(run.Json[0].GetProperty("ruleLimits").EnumerateArray(), limit => limit.GetProperty("rule")
            .GetString() == "proof before part");
    }

    // What says most comes first; the pairs are named by the titles of their pages.
    [Fact]
    public async Task Stats_TinyPages_NamesWhatIsEasilyMistaken()
    {
        var run = await Run.OfAsync("", "content", "stats", Tiny, "--walks", "2");

        Assert.Contains("| symptom | faults | surely isolated to 1 / 2 / 3 repairs |", run.Output,
            StringComparison.Ordinal);
        Assert.Matches(@"\n- sensor-code: None of these / Room sensor failed \d+ %\n", run.Output);
    }

    // A share of all walks reaches to 100 % and no further, one of none begins at 0; what never happened may yet
    // happen.
    [Fact]
    public async Task Stats_DrawnWalks_NoIntervalLeavesWhatIsPossible()
    {
        var run = await Run.OfAsync("", "content", "stats", Tiny, "--json", "--walks", "20", "--exact", "0");

        JsonElement walks = run.Json[0].GetProperty("series")[0].GetProperty("overall").GetProperty("walks");
        JsonElement[] shares = [walks.GetProperty("handedOver"), .. walks.GetProperty("isolatedTo").EnumerateArray()];
        Assert.All(shares,
            share => Assert.InRange(share.GetProperty("low").GetDouble(), 0, share.GetProperty("high").GetDouble()));
        Assert.All(shares, share => Assert.InRange(share.GetProperty("high").GetDouble(), 0.01, 1));
        Assert.InRange(walks.GetProperty("partsInVain").GetProperty("low").GetDouble(), 0, 1);
        Assert.InRange(walks.GetProperty("partsInVain").GetProperty("high").GetDouble(), 0.01, 10);
    }

    [Fact]
    public async Task Stats_TradeOfEach_HasAPointForEverySymptomAndPrice()
    {
        var run = await Run.OfAsync("", "content", "stats", Tiny, "--walks", "2", "--trade", "--each");

        string table = run.Output[run.Output.IndexOf("### Of each symptom", StringComparison.Ordinal)..];
        Assert.Equal(5, table.Split('\n')
            .Count(line => line.StartsWith("| fan-not-turning |", StringComparison.Ordinal)));
        Assert.Equal(5, table.Split('\n').Count(line => line.StartsWith("| sensor-code |", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Stats_EachWithoutTrade_IsRefused() =>
        Assert.Equal(2, (await Run.OfAsync("", "content", "stats", Tiny, "--each")).Code);

    [Fact]
    public async Task Stats_LessWork_SaysSo() =>
        Assert.Contains("so theirs may be other walks",
            (await Run.OfAsync("", "content", "stats", Tiny, "--walks", "2", "--work", "1000")).Output,
            StringComparison.Ordinal);

    [Fact]
    public async Task Stats_SameSeed_SameText() => Assert.Equal(
        (await Run.OfAsync("", "content", "stats", Tiny)).Output,
        (await Run.OfAsync("", "content", "stats", Tiny)).Output);

    [Theory]
    [InlineData("--series", "no-such-series")]
    [InlineData("--who", "nobody")]
    [InlineData("--walks", "0")]
    [InlineData("--exact", "-1")]
    public async Task Stats_WrongCall_IsRefused(string option, string value)
    {
        var run = await Run.OfAsync("", "content", "stats", Tiny, option, value);

        Assert.Equal(2, run.Code);
        Assert.Single(run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }
}
