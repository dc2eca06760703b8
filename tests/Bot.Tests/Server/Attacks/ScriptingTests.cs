using System.Net;
using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Text;
using DxAssistant.Bot.Tests.Cases.Photos;
using DxAssistant.Bot.Tests.Fuzzing;
using DxAssistant.Bot.Tests.Server.Accounts;
using DxAssistant.Bot.Tests.Server.Workbench;
using DxAssistant.Cases;
using DxAssistant.Knowledge.Content.Editing;
using DxAssistant.Server.Desk;
using DxAssistant.Server.Serving;

namespace DxAssistant.Bot.Tests.Server.Attacks;

/// <summary>Words that would be a program stay words: through every field, to every page and answer.</summary>
public sealed class ScriptingTests
{
    private static readonly string?[] Data = ["application/json", "application/problem+json", "text/csv", "text/plain"];

    public static TheoryData<string> Texts => Of(Scripts.All);

    /// <summary>
    /// One of each three: what differs here is the fields, and each of them takes every sort of quote and bracket.
    /// </summary>
    public static TheoryData<string> Some => Of(Scripts.All.Where((_, at) => at % 3 == 0));

    [Theory]
    [MemberData(nameof(Some))]
    public async Task Words_InEveryField_ReachNoPageAndNoAnswerThatCouldRunThem(string text)
    {
        using var pages = new TinyPages();
        await using var server = await RunningServer.StartAsync(pages.Folder, pages.PathOf("../proposals"));
        string id = await server.OpenCaseAsync();
        foreach (var (path, body) in Fields(id, text))
        {
            using var answer = await server.Http.PostAsJsonAsync(path, body);
            await HoldsAsync(answer);
        }

        foreach (string address in Addresses(id, Uri.EscapeDataString(text)))
        {
            using var answer = await server.Http.GetAsync(address);
            await HoldsAsync(answer);
        }
    }

    [Theory]
    [MemberData(nameof(Texts))]
    public void Page_OfAnAuthor_ShowsThemAsWords(string text)
    {
        PageRead.IsTame(
            PageHtml.Of(
                $"---\nid: {text}\n---\n# {text}\n\n{text}\n\n> {text}\n\n| a | {text} |\n|---|---|\n| {text} | b |\n\n[{text}]({text} \"{text}\")\n\n```{text}\n{text}\n```\n"));
        PageRead.IsTame(PageHtml.Of(text));
    }

    [Theory]
    [MemberData(nameof(Texts))]
    [InlineData("\tdxprobe")]
    [InlineData("\rdxprobe")]
    public void Table_Cell_IsNoFormulaAndComesBack(string text)
    {
        var line = new StringBuilder();
        ClaimCsv.Line(line, ["first", text, "last"]);

        var cells = CellsOf(line.ToString());
        Assert.Equal(3, cells.Count);
        Assert.DoesNotContain(cells[1][0], "=+-@\t\r");
        Assert.EndsWith(text, cells[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task SignIn_FromAnyAddress_IsSentOnThisServerAlone()
    {
        await using var company = await Company.StartAsync();
        foreach (string text in Scripts.All) await IsSentOnAsync(company, text);
    }

    [Theory]
    [InlineData("<script>dxprobe()</script>")]
    [InlineData("dxprobe\r\ndxprobe signed in")]
    [InlineData("dxprobe\tsigned in")]
    public async Task SignIn_NameThatIsNone_IsNotWrittenDown(string text)
    {
        await using var company = await Company.StartAsync();

        using var refused = await Company.SignInAsync(company.Browser(), text, text);

        Assert.Equal(HttpStatusCode.Unauthorized, refused.StatusCode);
        Assert.Contains(company.Book.Audit(10), line => line is { Who: "?", Did: "was not let in" });
        Assert.DoesNotContain(company.Book.Audit(10),
            line => (line.Who + line.Did + line.To).Contains(Scripts.Mark, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("../../x")]
    [InlineData("x\"; filename=\"y.html")]
    [InlineData("x\r\nSet-Cookie: a=b")]
    public async Task Photo_Name_IsThePrograms(string named)
    {
        await using var server = await RunningServer.StartAsync();
        string id = await server.OpenCaseAsync();
        using var bytes = new ByteArrayContent(SmallPictures.Png);
        bytes.Headers.ContentType = new MediaTypeHeaderValue("image/png");
        bytes.Headers.TryAddWithoutValidation("Content-Disposition",
            $"attachment; filename=\"{named.Replace("\r\n", "", StringComparison.Ordinal)}\"");
        using var sent = await server.Http.PostAsync(
            $"/api/cases/{id}/photos?turnId=p&shows=part&name={Uri.EscapeDataString(named)}", bytes);
        Assert.Equal(HttpStatusCode.Created, sent.StatusCode);

        using var shown = await server.Http.GetAsync(
            $"/api/cases/{id}/photos/{DxAssistant.Cases.Photos.Photo.HashOf(SmallPictures.Png)}");

        await HoldsAsync(shown);
        Assert.Matches("^attachment; filename=\"?[0-9a-f]{12}\\.png\"?$",
            shown.Content.Headers.ContentDisposition!.ToString());
    }

    // Source: RFC 6797, 6.1 and 7.2: only over a safe connection, and then always.
    [Theory]
    [InlineData("desk.example", "https", true)]
    [InlineData("desk.example", "http", false)]
    [InlineData("localhost", "https", false)]
    public async Task Answer_OverHttps_KeepsTheBrowserThere(string host, string scheme, bool told)
    {
        var settings = new ServerSettings(IPAddress.Loopback, 0, []) { BehindProxy = true, Hosts = ["desk.example"] };
        await using var app = ChatServer.Build(settings, new MemoryCaseStore(TimeProvider.System), () => Shipped.InUse);
        await app.StartAsync();
        using var http = new HttpClient { BaseAddress = new Uri(app.Urls.First()) };
        using var request = new HttpRequestMessage(HttpMethod.Get, "/sign-in");
        request.Headers.Host = host;
        request.Headers.Add("X-Forwarded-Proto", scheme);

        using var answer = await http.SendAsync(request);

        Assert.Equal(told ? ["max-age=31536000; includeSubDomains"] : [],
            answer.Headers.TryGetValues("Strict-Transport-Security", out var kept) ? kept : []);
    }

    [Theory]
    [InlineData("/api/cases")]
    [InlineData("/API/cases")]
    public async Task Answer_WithCases_IsNotKept(string address)
    {
        await using var server = await RunningServer.StartAsync();
        using var answer = await server.Http.GetAsync(address);
        Assert.True(answer.Headers.CacheControl!.NoStore);
    }

    private static TheoryData<string> Of(IEnumerable<string> texts)
    {
        var data = new TheoryData<string>();
        foreach (string text in texts) data.Add(text);
        return data;
    }

    private static async Task IsSentOnAsync(Company company, string text)
    {
        using var answer = await company.Browser().GetAsync($"/cases?x={Uri.EscapeDataString(text)}");
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.Matches("^/sign-in\\?then=[A-Za-z0-9%._~-]+$", answer.Headers.Location!.OriginalString);
    }

    private static IEnumerable<(string Path, object Body)> Fields(string id, string text) =>
    [
        ($"/api/cases/{id}/turns", new { turnId = "t1", text, question = text }),
        ($"/api/cases/{id}/turns", new { turnId = text, answer = new { choice = text, question = text } }),
        ($"/api/cases/{id}/turns",
            new { turnId = "t3", answer = new { readings = new Dictionary<string, string> { [text] = text } } }),
        ($"/api/cases/{id}/turns", new { turnId = "t4", answer = new { command = text } }),
        ($"/api/cases/{id}/job", new { turnId = "j1", unit = new { model = text, serial = text, site = text } }),
        ($"/api/cases/{id}/job", new { turnId = "j2", unit = new { series = text } }),
        ($"/api/cases/{id}/job", new { turnId = "j3", person = new { part = "customer", name = text, phone = text } }),
        ($"/api/cases/{id}/job", new { turnId = "j4", note = text }),
        ($"/api/cases/{id}/call/notes", new { text }),
        ($"/api/claims/{text}/acts", new { act = text, why = text }),
        ("/api/tokens", new { label = text, scopes = new[] { "read-cases" } }),
        ("/api/tokens", new { label = "x", scopes = new[] { text } }),
        ("/api/join", new { code = text }),
        ("/api/pages/proof", new { pages = new[] { new { path = text, text } }, show = text }),
        ("/api/pages/proof",
            new { pages = new[] { new { path = "index.md", text = $"# {text}" } }, show = "index.md" }),
        ("/api/messages", new
        {
            type = "message", id = text, text, channelId = text, serviceUrl = "http://localhost:1",
            deliveryMode = "expectReplies",
            conversation = new { id = text }, from = new { id = text, name = text }, recipient = new { id = "bot" },
        }),
    ];

    private static IEnumerable<string> Addresses(string id, string text) => new[]
    {
        "/", "/cases", $"/case/{id}", $"/case/{id}/sheet", $"/case/{id}/job", $"/case/{id}/call", "/claims", "/work",
        "/join", "/device", "/pages", "/proposals", "/sign-in", "/accounts",
        "/api/cases", $"/api/cases/{id}", $"/api/cases/{id}/job", $"/api/cases/{id}/summary",
        $"/api/cases/{id}/picture", $"/api/cases/{id}/log", $"/api/cases/{id}/call",
        "/api/claims", "/api/claims.csv", "/api/claims.json", "/api/claims/verify", "/api/calls", "/api/tokens",
        "/api/audit", "/api/pages", "/api/pages/text", "/api/proposals",
    }.Select(path =>
        $"{path}?text={text}&q={text}&name={text}&path={text}&line={text}&then={text}&typed={text}&state={text}");

    private static async Task HoldsAsync(HttpResponseMessage answer)
    {
        string from =
            $"{answer.RequestMessage!.Method} {answer.RequestMessage.RequestUri!.PathAndQuery}: {(int)answer.StatusCode}";
        Assert.True((int)answer.StatusCode is < 500 or 501 or 503, from);
        string policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("'unsafe-", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal("DENY", Assert.Single(answer.Headers.GetValues("X-Frame-Options")));
        Assert.Equal("no-referrer", Assert.Single(answer.Headers.GetValues("Referrer-Policy")));
        Assert.False(answer.Headers.Contains("Access-Control-Allow-Origin"), from);
        string body = await answer.Content.ReadAsStringAsync();
        if (!body.Contains(Scripts.Mark, StringComparison.Ordinal)) return;
        // Whatever repeats the words says that they are data, and the browser is told to believe it.
        Assert.Contains(answer.Content.Headers.ContentType?.MediaType, Data);
    }

    // Source: RFC 4180, 2.5 to 2.7.
    private static List<string> CellsOf(string line)
    {
        var cells = new List<string> { "" };
        bool quoted = false;
        for (int at = 0; at < line.Length - 2; at++)
        {
            if (line[at] == '"' && quoted && line[at + 1] == '"') cells[^1] += line[++at];
            else if (line[at] == '"') quoted = !quoted;
            else if (line[at] == ',' && !quoted) cells.Add("");
            else cells[^1] += line[at];
        }

        Assert.EndsWith("\r\n", line, StringComparison.Ordinal);
        return cells;
    }
}
