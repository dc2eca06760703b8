using System.Diagnostics;
using System.Net;
using System.Net.Http.Json;
using System.Text.Json.Nodes;
using DxAssistant.Bot.Tests.Server.Accounts;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Content;
using DxAssistant.Server.Workbench.Writing;

namespace DxAssistant.Bot.Tests.Server.Workbench;

/// <summary>Proposals of authors: kept as patches that Git applies, never written into the pages.</summary>
public sealed class ProposalTests : IDisposable
{
    private const string Page = "cautions/live-mains.md";
    private readonly TinyPages files = new();

    private string Proposals => Path.Combine(Path.GetDirectoryName(files.Folder)!, "proposals");

    public void Dispose() => files.Dispose();

    [Theory]
    [InlineData("\n", "", false)]
    [InlineData("\r\n", "", false)]
    [InlineData("\n", "\uFEFF", false)]
    [InlineData("\n", "", true)]
    public async Task HandIn_ChangedAndNewPage_AppliesWithGitAndGivesTheSameText(string end, string mark, bool cutsEnd)
    {
        files.Change(Page, text => mark + (cutsEnd ? text.TrimEnd('\n') : text).Replace("\n", end));
        await using Company company = await StartAsync();
        HttpClient aron = await company.BrowserOfAsync("aron");
        string text = (await TextAsync(aron, Page)).Text
            + "\nKeep one hand in your pocket.\n# Not a heading\n-- not a mark\n";
        const string fresh = "---\nkind: caution\nid: hot-pipe\n---\n# Hot pipe\n";

        JsonNode made = await JsonAsync(await HandInAsync(aron, "Say it\n--- a/evil\n+++ b/evil\n@@ -0,0 +1 @@\n+evil",
            await PageAsync(aron, Page, text), await PageAsync(aron, "cautions/hot-pipe.md", fresh)));

        Assert.Equal(1, (int)made["number"]!);
        string patch = Path.Combine(Proposals, "0001.patch");
        Assert.Contains("# By: aron\n", await File.ReadAllTextAsync(patch), StringComparison.Ordinal);
        Assert.False(File.Exists(files.PathOf("cautions/hot-pipe.md")), "the web wrote a page");
        Git("init", "-q");
        Git("apply", patch);
        Assert.Equal(mark + text.Replace("\n", end),
            System.Text.Encoding.UTF8.GetString(File.ReadAllBytes(files.PathOf(Page))));
        Assert.Equal(fresh, files.Read("cautions/hot-pipe.md"));
        Assert.Equal(["content", "proposals"],
            Directory.EnumerateFileSystemEntries(Path.GetDirectoryName(files.Folder)!).Select(Path.GetFileName)
                .Where(name => name != ".git").Order());
        Assert.Equal("in-place", (string?)(await GetAsync(aron, "/api/proposals/1"))["stands"]);
    }

    [Fact]
    public async Task HandIn_AnotherIdForAPage_AppliesWithGitAndLeavesNothingWrong()
    {
        const string old = "faults/fan-plug-loose.md";
        await using Company company = await StartAsync();
        HttpClient aron = await company.BrowserOfAsync("aron");
        string text = (await TextAsync(aron, old)).Text!;

        JsonNode changed = await JsonAsync(await aron.PostAsJsonAsync("/api/pages/rename",
            new { pages = new[] { new { path = old, text } }, show = old, id = "plug-not-home" }));
        object[] pages = [.. changed["pages"]!.AsArray().Select(page => page!["text"] is { } now
            ? (object)new { path = (string)page["path"]!, text = (string)now!, @base = (string)page["base"]! }
            : new { path = (string)page["path"]!, gone = true, @base = (string)page["base"]! })];
        await HandInAsync(aron, "A better name", pages);

        Git("init", "-q");
        Git("apply", Path.Combine(Proposals, "0001.patch"));
        Assert.False(File.Exists(files.PathOf(old)), "the page is still there under its old id");
        Assert.Empty(ContentCompiler.Compile(ContentFolderReader.Read(files.Folder)).Diagnostics);
        Assert.DoesNotContain("fan-plug-loose",
            string.Concat(Directory.EnumerateFiles(files.Folder, "*.md", SearchOption.AllDirectories)
                .Select(File.ReadAllText)), StringComparison.Ordinal);
        JsonNode proposal = await GetAsync(aron, "/api/proposals/1");
        Assert.Equal("in-place", (string?)proposal["stands"]);
        Assert.Equal(old, (string?)proposal["pages"]!.AsArray().Single(page => (bool)page!["takesOut"]!)!["path"]);
    }

    [Fact]
    public async Task Rename_ToAnIdThatIsThere_IsRefused()
    {
        await using Company company = await StartAsync();
        HttpClient aron = await company.BrowserOfAsync("aron");
        HttpResponseMessage answer = await aron.PostAsJsonAsync("/api/pages/rename",
            new { pages = new[] { await PageAsync(aron, Page, "# A\n") }, show = "faults/fan-plug-loose.md",
                id = "fan-motor-failed" });
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("fan-motor-failed is there already", await answer.Content.ReadAsStringAsync(),
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task Rename_OfWhatMorePagesNameThanAProposalHas_IsRefusedWithTheirNumber()
    {
        string[] others = [.. Enumerable.Range(0, ProposalDesk.MostPages).Select(n => $"cautions/near-{n}.md")];
        foreach (string other in others)
            await File.WriteAllTextAsync(files.PathOf(other),
                $"---\nkind: caution\nid: {Path.GetFileNameWithoutExtension(other)}\n---\n# Near\n\n## Danger\nSee [it](live-mains.md).\n\n## Do\n- Wait.\n");
        await using RunningServer server = await RunningServer.StartAsync(files.Folder, Proposals);
        var page = new { path = "cautions/live-mains.md",
            text = await File.ReadAllTextAsync(files.PathOf("cautions/live-mains.md")) };
        HttpResponseMessage answer = await server.Http.PostAsJsonAsync("/api/pages/rename",
            new { pages = new[] { page }, show = page.path, id = "mains" });
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains($"a proposal has {ProposalDesk.MostPages} at most", await answer.Content.ReadAsStringAsync(),
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task HandIn_TextForgotten_IsRefusedAndTakesNothingOut()
    {
        await using Company company = await StartAsync();
        HttpClient aron = await company.BrowserOfAsync("aron");
        string mark = (await TextAsync(aron, Page)).Base;
        Assert.Equal(HttpStatusCode.BadRequest,
            (await HandInAsync(aron, "Oops", new { path = Page, @base = mark })).StatusCode);
        Assert.Equal(HttpStatusCode.BadRequest,
            (await HandInAsync(aron, "Oops",
                new { path = Page, text = "# A\n", gone = true, @base = mark })).StatusCode);
        Assert.False(Directory.Exists(Proposals));
    }

    [Fact]
    public async Task Proof_OfAPageTakenOut_SaysWhatLinksToNothing()
    {
        await using RunningServer server = await RunningServer.StartAsync(files.Folder, Proposals);
        JsonNode seen = await JsonAsync(
            await server.Http.PostAsJsonAsync("/api/pages/proof",
                new { pages = new[] { new { path = "repairs/seat-plug.md", gone = true } },
                    show = "repairs/seat-plug.md" }));
        Assert.Contains(seen["found"]!.AsArray(), found => (string?)found!["rule"] == "broken-link");
        Assert.Null(seen["html"]);
    }

    [Fact]
    public async Task HandIn_SameKeyAtOnceAndAgain_IsOneProposal()
    {
        await using Company company = await StartAsync();
        HttpClient aron = await company.BrowserOfAsync("aron");
        object page = await PageAsync(aron, Page, "# Other\n");
        aron.DefaultRequestHeaders.Add("Idempotency-Key", "k1");

        JsonNode[] made = await Task.WhenAll(Enumerable.Range(0, 4)
            .Select(async _ => await JsonAsync(await HandInAsync(aron, "Shorter", page))));
        HttpResponseMessage other = await HandInAsync(aron, "Another", page);

        Assert.All(made, answer => Assert.Equal(1, (int)answer["number"]!));
        Assert.Single((await GetAsync(aron, "/api/proposals")).AsArray());
        Assert.Equal(HttpStatusCode.UnprocessableEntity, other.StatusCode);
    }

    [Fact]
    public async Task HandIn_PageThatChangedSince_IsToldAndNothingIsKept()
    {
        await using Company company = await StartAsync();
        HttpClient aron = await company.BrowserOfAsync("aron");
        object page = await PageAsync(aron, Page, "# Other\n");
        files.Change(Page, text => text + "\nBy somebody else.\n");

        HttpResponseMessage answer = await HandInAsync(aron, "Shorter", page);

        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Equal(Page, (string?)(await JsonAsync(answer))["missing"]![0]);
        Assert.Empty((await GetAsync(aron, "/api/proposals")).AsArray());
    }

    [Fact]
    public async Task Show_PageThatChangedAfterwards_SaysWhatOthersChanged()
    {
        await using Company company = await StartAsync();
        HttpClient aron = await company.BrowserOfAsync("aron");
        await HandInAsync(aron, "Shorter", await PageAsync(aron, Page, "# Other\n"));
        Assert.Equal("fits", (string?)(await GetAsync(aron, "/api/proposals/1"))["stands"]);

        files.Change(Page, text => text + "\nBy somebody else.\n");

        JsonNode proposal = await GetAsync(aron, "/api/proposals/1");
        Assert.Equal("overtaken", (string?)proposal["stands"]);
        Assert.Contains(proposal["pages"]![0]!["since"]!.AsArray(), line => (string?)line!["mark"] == "in"
            && (string?)line["text"] == "By somebody else.");
    }

    [Fact]
    public async Task TakeBack_ByAnotherAuthor_IsRefused_ByTheAuthor_RemovesThePatchAndKeepsTheText()
    {
        await using Company company = await StartAsync();
        HttpClient aron = await company.BrowserOfAsync("aron"), ada = await company.BrowserOfAsync("ada");
        await HandInAsync(ada, "Hers", await PageAsync(ada, Page, "# Hers\n"));
        await HandInAsync(aron, "His", await PageAsync(aron, Page, "# His\n"));

        Assert.Equal(HttpStatusCode.Forbidden, (await aron.DeleteAsync("/api/proposals/1")).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await aron.DeleteAsync("/api/proposals/2")).StatusCode);

        Assert.Equal(["0001.patch"], Directory.EnumerateFiles(Proposals).Select(Path.GetFileName));
        JsonNode his = await GetAsync(aron, "/api/proposals/2");
        Assert.Equal(("taken-back", "# His\n"), ((string?)his["stands"], (string?)his["pages"]![0]!["text"]));
        Assert.Contains(company.Book.Audit(10), line => line is { Who: "aron", Did: "took back proposal" });
    }

    [Fact]
    public async Task Proposals_AfterARestart_AreThereAndNumbersGoOn()
    {
        await using (Company before = await StartAsync())
        {
            HttpClient aron = await before.BrowserOfAsync("aron");
            await HandInAsync(aron, "First", await PageAsync(aron, Page, "# First\n"));
            await aron.DeleteAsync("/api/proposals/1");
        }

        await using Company company = await StartAsync();
        HttpClient again = await company.BrowserOfAsync("aron");
        Assert.Equal(2,
            (int)(await JsonAsync(
                await HandInAsync(again, "Second", await PageAsync(again, Page, "# Second\n"))))["number"]!);
        Assert.Equal([2, 1], (await GetAsync(again, "/api/proposals")).AsArray().Select(each => (int)each!["number"]!));
    }

    [Theory]
    [InlineData("tom", HttpStatusCode.Forbidden)]
    [InlineData("dora", HttpStatusCode.Forbidden)]
    [InlineData("aron", HttpStatusCode.OK)]
    [InlineData("ada", HttpStatusCode.OK)]
    [InlineData(null, HttpStatusCode.Unauthorized)]
    public async Task Writing_IsForAuthors(string? name, HttpStatusCode expected)
    {
        await using Company company = await StartAsync();
        HttpClient browser = name is null ? company.Browser() : await company.BrowserOfAsync(name);
        foreach (string path in new[] { "/api/pages", $"/api/pages/text?path={Page}", "/api/proposals" })
            Assert.Equal(expected, await Company.StatusAsync(browser, path));
        HttpResponseMessage proof = await browser.PostAsJsonAsync("/api/pages/proof",
            new { pages = new[] { new { path = Page, text = "# A" } }, show = Page });
        Assert.Equal(expected, proof.StatusCode);
        foreach (string path in new[] { "/pages", $"/pages/write/{Page}", "/proposals", "/proposals/1" })
            Assert.Equal(expected == HttpStatusCode.Unauthorized ? HttpStatusCode.Redirect : expected,
                await Company.StatusAsync(browser, path));
    }

    [Theory]
    [InlineData("../secret.md")]
    [InlineData("cautions/../../secret.md")]
    [InlineData("/etc/secret.md")]
    [InlineData("cautions\\..\\secret.md")]
    [InlineData("cautions/./live.md")]
    [InlineData("cautions//live.md")]
    [InlineData("cautions/.hidden.md")]
    [InlineData("cautions/a b.md")]
    [InlineData("cautions/a.md\n")]
    [InlineData("cautions/A.md")]
    [InlineData("cautions/a.svg")]
    [InlineData("cautions/con.md")]
    [InlineData("nowhere/a.md")]
    [InlineData("a.md")]
    [InlineData("cautions/%2e%2e.md")]
    public async Task Path_ThatLeadsElsewhere_IsRefusedEverywhere(string path)
    {
        await using Company company = await StartAsync();
        HttpClient aron = await company.BrowserOfAsync("aron");
        Assert.Equal(HttpStatusCode.NotFound,
            await Company.StatusAsync(aron, "/api/pages/text?path=" + Uri.EscapeDataString(path)));
        Assert.Equal(HttpStatusCode.BadRequest,
            (await HandInAsync(aron, "Trick", new { path, text = "# A\n", @base = "" })).StatusCode);
        Assert.Equal(HttpStatusCode.BadRequest,
            (await aron.PostAsJsonAsync("/api/pages/proof",
                new { pages = new[] { new { path, text = "# A" } }, show = path })).StatusCode);
        Assert.False(Directory.Exists(Proposals));
    }

    [Theory]
    [InlineData("")]
    [InlineData("  \n ")]
    [InlineData("# A\u0000\n")]
    [InlineData("# A\u202E\n")]
    [InlineData("# A\u001B[2J\n")]
    public async Task Text_ThatIsEmptyOrHidesSomething_IsRefused(string text)
    {
        await using Company company = await StartAsync();
        HttpClient aron = await company.BrowserOfAsync("aron");
        Assert.Equal(HttpStatusCode.BadRequest,
            (await HandInAsync(aron, "Trick", await PageAsync(aron, Page, text))).StatusCode);
        if (text.Trim().Length > 3)
            Assert.Equal(HttpStatusCode.BadRequest,
                (await HandInAsync(aron, text, await PageAsync(aron, Page, "# B\n"))).StatusCode);
    }

    [Fact]
    public async Task Text_BeyondTheLimits_IsRefused()
    {
        await using Company company = await StartAsync();
        HttpClient aron = await company.BrowserOfAsync("aron");
        string large = "# A\n" + new string('x', PageRules.MostCharacters);
        Assert.Equal(HttpStatusCode.BadRequest,
            (await HandInAsync(aron, "Large", await PageAsync(aron, Page, large))).StatusCode);
        Assert.Equal(HttpStatusCode.BadRequest,
            (await HandInAsync(aron, new string('n', 2001), await PageAsync(aron, Page, "# B\n"))).StatusCode);
        Assert.Equal(HttpStatusCode.BadRequest,
            (await HandInAsync(aron, " ", await PageAsync(aron, Page, "# B\n"))).StatusCode);
        object[] many = [.. Enumerable.Range(0, ProposalDesk.MostPages + 1)
            .Select(n => new { path = $"cautions/c{n}.md", text = "# A\n", @base = "" })];
        Assert.Equal(HttpStatusCode.BadRequest, (await HandInAsync(aron, "Many", many)).StatusCode);
        using var body = new StringContent("{\"note\":\""
            + new string('x', (int)WritingBody.MostBytes), System.Text.Encoding.UTF8, "application/json");
        object[] six = [.. Enumerable.Range(0, 6)
            .Select(n => new { path = $"cautions/c{n}.md", text = "# A\n" + new string('x', 95_000), @base = "" })];
        Assert.Equal(HttpStatusCode.BadRequest, (await HandInAsync(aron, "Much", six)).StatusCode);
        string open = "# A\n" + string.Concat(Enumerable.Repeat("![a](", 18_000));
        Assert.Equal(HttpStatusCode.BadRequest,
            (await aron.PostAsJsonAsync("/api/pages/proof",
                new { pages = new[] { new { path = Page, text = open } }, show = Page })).StatusCode);
        using var half =
            new StringContent("{\"note\":\"\\ud800\",\"pages\":[]}", System.Text.Encoding.UTF8, "application/json");
        Assert.Equal(HttpStatusCode.BadRequest, (await aron.PostAsync("/api/proposals", half)).StatusCode);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, (await aron.PostAsync("/api/proposals", body)).StatusCode);
        Assert.False(Directory.Exists(Proposals));
    }

    [Fact]
    public async Task Proof_OfASlip_NamesItsPlaceAndItsMend_AndWhatItBreaksElsewhere()
    {
        await using RunningServer server = await RunningServer.StartAsync(files.Folder, Proposals);
        string text = files.Read("checks/fan-plug.md").Replace("who: technician", "who: technican");
        JsonNode seen = await JsonAsync(await server.Http.PostAsJsonAsync("/api/pages/proof",
            new { pages = new[] { new { path = "checks/fan-plug.md", text } }, show = "checks/fan-plug.md" }));
        JsonNode found = seen["found"]!.AsArray().Single()!;
        Assert.Equal("technican", text[(int)found["start"]!..(int)found["end"]!]);
        Assert.Equal("technician", (string?)found["mend"]!["text"]);
        Assert.Null(seen["walks"]);

        string other = files.Read("repairs/seat-plug.md").Replace("id: seat-plug", "id: seat-the-plug");
        seen = await JsonAsync(
            await server.Http.PostAsJsonAsync("/api/pages/proof",
                new { pages = new[] { new { path = "repairs/seat-plug.md", text = other } },
                    show = "repairs/seat-plug.md" }));
        Assert.NotEqual(0, (int)seen["errors"]!);
    }

    // The walk is that of the proposed page: a likelihood turned round turns the belief round.
    [Fact]
    public async Task Walk_WithAProposedPage_IsThatOfTheProposal()
    {
        await using RunningServer server = await RunningServer.StartAsync(files.Folder, Proposals);
        string path = "faults/fan-plug-loose.md", text = files.Read(path);
        string rarer = text.Replace("frequency: regular", "frequency: rare");
        Assert.NotEqual(text, rarer);
        Assert.True(await BeliefAsync(server, path, text) > 1.5 * await BeliefAsync(server, path, rarer));
        Assert.Equal(text, files.Read(path));
    }

    [Fact]
    public async Task Changes_FromAnotherSite_AreTurnedAway()
    {
        await using RunningServer server = await RunningServer.StartAsync(files.Folder, Proposals);
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/proposals")
        {
            Content = JsonContent.Create(new { note = "x", pages = Array.Empty<object>() }),
        };
        request.Headers.Add("Sec-Fetch-Site", "cross-site");
        Assert.Equal(HttpStatusCode.Forbidden, (await server.Http.SendAsync(request)).StatusCode);
    }

    private Task<Company> StartAsync() => Company.StartAsync(files.Folder, Proposals);

    private static async Task<double> BeliefAsync(RunningServer server, string path, string text)
    {
        JsonNode walk = await JsonAsync(
            await server.Http.PostAsJsonAsync("/api/pages/walk",
                new { pages = new[] { new { path, text } },
                    walk = new { series = "alder-one", symptom = "fan-not-turning" } }));
        return (double)walk["belief"]!.AsArray()
            .Single(fault => (string?)fault!["id"] == "fan-plug-loose")!["probability"]!;
    }

    private static async Task<(string? Text, string Base)> TextAsync(HttpClient browser, string path)
    {
        JsonNode page = await GetAsync(browser, "/api/pages/text?path=" + Uri.EscapeDataString(path));
        return ((string?)page["text"], (string)page["base"]!);
    }

    private static async Task<object> PageAsync(HttpClient browser, string path, string text) =>
        new { path, text, @base = (await TextAsync(browser, path)).Base };

    private static Task<HttpResponseMessage> HandInAsync(HttpClient browser, string note, params object[] pages) =>
        browser.PostAsJsonAsync("/api/proposals", new { note, pages });

    private static async Task<JsonNode> GetAsync(HttpClient browser, string path) =>
        JsonNode.Parse(await browser.GetStringAsync(path))!;

    private static async Task<JsonNode> JsonAsync(HttpResponseMessage answer) =>
        JsonNode.Parse(await answer.Content.ReadAsStringAsync())!;

    private void Git(params string[] words)
    {
        var start = new ProcessStartInfo("git", words)
        {
            WorkingDirectory = Path.GetDirectoryName(files.Folder)!, RedirectStandardError = true,
        };
        start.Environment["GIT_CONFIG_GLOBAL"] = "/dev/null";
        using Process git = Process.Start(start)!;
        string error = git.StandardError.ReadToEnd();
        git.WaitForExit();
        Assert.True(git.ExitCode == 0, error);
    }
}
