using System.Net;
using System.Net.Http.Json;
using System.Text.Json.Nodes;
using DxAssistant.Knowledge.Content.Editing;
using DxAssistant.Server.Workbench.Preview;
using Microsoft.AspNetCore.Builder;

namespace DxAssistant.Bot.Tests.Server.Workbench;

public sealed class PreviewServerTests : IAsyncLifetime, IDisposable
{
    private readonly TinyPages files = new();
    private readonly PreviewPages pages;
    private readonly WebApplication app;
    private readonly HttpClient http = new();

    public PreviewServerTests()
    {
        pages = new PreviewPages(files.Folder);
        pages.Reload();
        app = PreviewServer.Build(pages, 0);
    }

    public async Task InitializeAsync()
    {
        await app.StartAsync();
        http.BaseAddress = new Uri(app.Urls.First());
    }

    public async Task DisposeAsync() => await app.DisposeAsync();

    public void Dispose()
    {
        http.Dispose();
        files.Dispose();
    }

    [Fact]
    public void Urls_OfThePreview_AreOfThisMachine() =>
        Assert.All(app.Urls, url => Assert.True(IPAddress.IsLoopback(IPAddress.Parse(new Uri(url).Host))));

    [Fact]
    public async Task Page_WithHtmlInIt_ShowsItAndObeysItNot()
    {
        files.Change("cautions/live-mains.md", text => text + "\n<script>go()</script>\n");
        pages.Reload();
        JsonNode page = (await http.GetFromJsonAsync<JsonNode>("/api/preview/page?path=cautions/live-mains.md"))!;
        Assert.DoesNotContain("<script", (string?)page["html"], StringComparison.Ordinal);
        Assert.Contains("data-line=\"9\"", (string?)page["html"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pages_AfterASlip_SayItAndKeepTheLastGoodWalk()
    {
        files.Change("checks/fan-plug.md", text => text.Replace("who: technician", "who: technican"));
        pages.Reload();
        JsonNode all = (await http.GetFromJsonAsync<JsonNode>("/api/preview/pages"))!;
        Assert.Equal(("unknown-id", true), ((string?)all["found"]![0]!["rule"], (bool)all["usesLastGood"]!));
        Assert.Equal(HttpStatusCode.OK, (await Walk()).Status);
    }

    [Fact]
    public async Task Changes_AfterASave_AreSent()
    {
        using Stream stream = await http.GetStreamAsync("/api/preview/changes");
        using var reader = new StreamReader(stream);
        Assert.Equal("1", await Next(reader));
        pages.Reload();
        Assert.Equal("2", await Next(reader));
    }

    // P(plug | fan not turning) falls from its prior to next to nothing when the plug was found home.
    [Fact]
    public async Task Walk_StartedWithAnAnswer_ShowsBeliefAndPlanFromThere()
    {
        (_, JsonNode before) = await Walk();
        (_, JsonNode after) = await Walk(new AnswerGiven("fan-plug", "home"));
        Assert.True(Belief(before, "fan-plug-loose") > 10 * Belief(after, "fan-plug-loose"));
        Assert.Equal(1, after["belief"]!.AsArray().Sum(fault => (double)fault!["probability"]!), 9);
        Assert.DoesNotContain(after["options"]!.AsArray(), option => (string?)option!["check"] == "fan-plug");
        Assert.Equal((double)after["minutes"]!, after["options"]!.AsArray()
            .Min(option => (double)option!["minutes"]!), 9);
    }

    [Theory]
    [InlineData("fan-plug", "lose")]
    [InlineData("no-check", "home")]
    public async Task Walk_AnswerThatDoesNotFitAnyMore_IsToldAndPassedOver(string check, string outcome)
    {
        (HttpStatusCode status, JsonNode walk) =
            await Walk(passOver: true, new AnswerGiven(check, outcome), new AnswerGiven("fan-plug", "home"));
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.NotNull(walk["steps"]![0]!["unfit"]);
        Assert.Equal(Belief((await Walk(new AnswerGiven("fan-plug", "home"))).Json, "fan-plug-loose"),
            Belief(walk, "fan-plug-loose"), 12);
    }

    [Theory]
    [InlineData("fan-plug", "lose",
        "Answer 2 does not fit. The check fan-plug has no answer lose: it has home, loose.")]
    [InlineData("no-check", "home", "Answer 2 does not fit. The check no-check cannot be done here.")]
    [InlineData(null, null,
        "Answer 2 does not fit. An answer names a check with its outcome, or a repair that did not help.")]
    public async Task Walk_AnswerThatNoPageKnows_IsRefusedInASentence(string? check, string? outcome, string sentence)
    {
        (HttpStatusCode status, JsonNode problem) =
            await Walk(new AnswerGiven("board-supply", "good"), new AnswerGiven(check, outcome));
        Assert.Equal((HttpStatusCode.BadRequest, sentence), (status, (string?)problem["detail"]));
    }

    // The step is the conversation's, not the bare plan's: the proof of the motor is asked before the motor is changed.
    [Fact]
    public async Task Walk_RuleOverThePlan_NamesTheStepAndTheRule()
    {
        files.Change("faults/fan-motor-failed.md",
            text => text.Replace("It is proved.", "It is proved by [the supply](../checks/board-supply.md)."));
        pages.Reload();
        (_, JsonNode walk) = await Walk(new AnswerGiven("fan-plug", "home"));
        Assert.Equal("board-supply", (string?)walk["next"]!["check"]);
        Assert.Equal(("proof before part", "Replace the fan motor"),
            ((string?)walk["next"]!["rules"]![0]!["rule"], (string?)walk["next"]!["rules"]![0]!["instead"]));
    }

    // The figures of a step are those of the walk that ends there.
    [Fact]
    public async Task Walk_EachStep_CarriesBeliefAndMinutesAfterIt()
    {
        (_, JsonNode begin) = await Walk();
        (_, JsonNode walk) = await Walk(new AnswerGiven("fan-plug", "home"));
        Assert.Equal(begin["belief"]!.ToJsonString(), walk["begin"]!["belief"]!.ToJsonString());
        JsonNode step = walk["steps"]!.AsArray().Single()!;
        Assert.Equal(walk["belief"]!.ToJsonString(), step["after"]!["belief"]!.ToJsonString());
        Assert.Equal((double)walk["minutes"]!, (double)step["after"]!["minutes"]!);
        Assert.InRange((double)step["chance"]!, 0.001, 0.999);
    }

    [Fact]
    public async Task Walk_RepairThatDidNotHelp_LeavesWhatItCuresOut()
    {
        (_, JsonNode walk) = await Walk(new AnswerGiven(null, null, "seat-plug"));
        Assert.Null(walk["steps"]![0]!["unfit"]);
        Assert.DoesNotContain(walk["belief"]!.AsArray(), fault => (string?)fault!["id"] == "fan-plug-loose");
    }

    [Theory]
    [InlineData("no-series", "fan-not-turning")]
    [InlineData("alder-one", "no-symptom")]
    [InlineData(null, null)]
    public async Task Walk_OfWhatIsNotThere_IsRefusedInOneLine(string? series, string? symptom)
    {
        using HttpResponseMessage answer =
            await http.PostAsJsonAsync("/api/preview/walk", new WalkAsked(series, symptom, null));
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.NotEmpty((string)JsonNode.Parse(await answer.Content.ReadAsStringAsync())!["detail"]!);
    }

    [Fact]
    public async Task Pages_OfAnEmptyFolder_SayThatThereAreNone()
    {
        Directory.Delete(files.Folder, recursive: true);
        Directory.CreateDirectory(files.Folder);
        pages.Reload();
        JsonNode all = (await http.GetFromJsonAsync<JsonNode>("/api/preview/pages"))!;
        Assert.Empty(all["list"]!.AsArray());
    }

    [Theory]
    [InlineData("[go](javascript:go)")]
    [InlineData("<javascript:go>")]
    [InlineData("[go](JavaScript&colon;go)")]
    [InlineData("[go](data:text/html,go)")]
    public void Html_LinkThatRunsSomething_LeadsNowhere(string link)
    {
        string html = PageHtml.Of($"# Page\n{link}\n");
        Assert.DoesNotMatch("(?i)href=\"[^\"]*(javascript|data):", html);
    }

    [Fact]
    public void Html_FrontMatterAndTableRows_CarryTheirLines()
    {
        string html = PageHtml.Of("---\nkind: \"<b>\"\n---\n# T\n\n| A |\n|---|\n| b |\n");
        Assert.Contains("data-line=\"2\"><dt>kind</dt><dd>&quot;&lt;b&gt;&quot;</dd>", html, StringComparison.Ordinal);
        Assert.Contains("<tr data-line=\"8\">", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Page_OutsideTheFolder_IsNotThere() =>
        Assert.Equal(HttpStatusCode.NotFound, (await http.GetAsync("/api/preview/page?path=../secret.md")).StatusCode);

    [Fact]
    public async Task Start_Address_IsTheProof() =>
        Assert.Contains("Proof of the pages", await http.GetStringAsync("/"), StringComparison.Ordinal);

    private static double Belief(JsonNode walk, string fault) =>
        (double)walk["belief"]!.AsArray().Single(each => (string?)each!["id"] == fault)!["probability"]!;

    private Task<(HttpStatusCode Status, JsonNode Json)> Walk(params AnswerGiven[] seen) => Walk(passOver: false, seen);

    private async Task<(HttpStatusCode Status, JsonNode Json)> Walk(bool passOver, params AnswerGiven[] seen)
    {
        using HttpResponseMessage answer = await http.PostAsJsonAsync("/api/preview/walk",
            new WalkAsked("alder-one", "fan-not-turning", seen, passOver));
        return (answer.StatusCode, JsonNode.Parse(await answer.Content.ReadAsStringAsync())!);
    }

    private static async Task<string> Next(StreamReader reader)
    {
        while (await reader.ReadLineAsync() is { } line)
            if (line.StartsWith("data: ", StringComparison.Ordinal)) return line["data: ".Length..];
        return "";
    }
}
