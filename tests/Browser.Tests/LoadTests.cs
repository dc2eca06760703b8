using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Xunit.Abstractions;

namespace DxAssistant.Browser.Tests;

/// <summary>
/// How much comes over the air before the first line can be read. Bytes, not seconds: a busy machine counts them
/// alike.
/// </summary>
public sealed partial class LoadTests(ITestOutputHelper output)
{
    // Packed, with the heads of the answers; the engine and what works without signal come later.
    private const int MostBytes = 100_000;

    // The engine has 3.3 MB of it; the wordings of all that people say grow, and cost some 25 bytes each.
    private const long MostTakenAlong = 4_000_000;

    [ChromiumFact]
    public async Task FirstPage_WithAllItNeeds_StaysBelowTheBound()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync("Pixel 7");
        var finished = new List<IRequest>();
        visit.Page.RequestFinished += (_, request) => { lock (finished) finished.Add(request); };
        await visit.OpenAsync(site.Address);

        int bytes = 0;
        foreach (var request in finished.ToArray())
        {
            var sizes = await request.SizesAsync();
            bytes += sizes.ResponseBodySize + sizes.ResponseHeadersSize;
        }

        output.WriteLine($"{finished.Count} answers, {bytes} bytes");
        Assert.Contains(finished, request => request.Url.EndsWith("/js/pad.js", StringComparison.Ordinal));
        Assert.InRange(bytes, 1, MostBytes);
    }

    // What a phone takes along to work without signal, as it crosses the wire. The pack holds the pages of every
    // series, so one series alone is less.
    [ShippedEngineFact]
    public async Task EngineAndPages_TakenAlong_StayBelowTheBound()
    {
        await using var site = await Site.StartAsync(() => Shipped.Pages);
        using var http = new HttpClient { BaseAddress = new Uri(site.Address) };
        http.DefaultRequestHeaders.AcceptEncoding.ParseAdd("br");
        using var kit = JsonDocument.Parse(await http.GetStringAsync("/offline/kit"));
        var (engine, pages) = (await TakeAsync(http, kit.RootElement.GetProperty("engine")),
            await TakeAsync(http, kit.RootElement.GetProperty("pack")));

        output.WriteLine($"engine {engine} bytes and pages {pages} bytes on the wire");
        Assert.InRange(engine + pages, 1_000_000, MostTakenAlong);
    }

    [Theory]
    [InlineData("/css/ink.css")]
    [InlineData("/js/case.js")]
    [InlineData("/")]
    [InlineData("/favicon.svg")]
    [InlineData("/app.webmanifest")]
    public async Task File_OfThePages_IsPackedOnItsWay(string path)
    {
        await using var site = await Site.StartAsync();
        using var http = new HttpClient { BaseAddress = new Uri(site.Address) };
        using var request = new HttpRequestMessage(HttpMethod.Get, path);
        request.Headers.AcceptEncoding.ParseAdd("br");

        using var answer = await http.SendAsync(request);

        Assert.Equal(["br"], answer.Content.Headers.ContentEncoding);
        Assert.Contains("Accept-Encoding", answer.Headers.Vary);
    }

    // What a case holds is not packed beside what somebody else may have put into it.
    [Fact]
    public async Task Answer_AboutCases_IsNotPacked()
    {
        await using var site = await Site.StartAsync();
        using var http = new HttpClient { BaseAddress = new Uri(site.Address) };
        using var request = new HttpRequestMessage(HttpMethod.Get, "/api/cases");
        request.Headers.AcceptEncoding.ParseAdd("br, gzip");

        using var answer = await http.SendAsync(request);

        Assert.Empty(answer.Content.Headers.ContentEncoding);
    }

    // Without it each script is asked for only once the one that needs it has come: four ways there and back.
    [Fact]
    public void Preloads_OfTheSheet_AreExactlyWhatItsScriptsImport()
    {
        string page = File.ReadAllText(Path.Combine(Pages, "case.html"));
        var begun = Scripts().Matches(page).Select(match => match.Groups[1].Value).ToList();
        var needed = new SortedSet<string>(StringComparer.Ordinal);
        foreach (string script in begun) Follow(script, needed);

        Assert.NotEmpty(begun);
        Assert.Equal(needed.Except(begun), Preloads().Matches(page).Select(match => match.Groups[1].Value));
    }

    // Bodies and the heads of the answers, both as they come.
    private static async Task<long> TakeAsync(HttpClient http, JsonElement part)
    {
        long bytes = 0;
        foreach (var name in part.GetProperty("files").EnumerateArray())
        {
            using var answer = await http.GetAsync(part.GetProperty("root").GetString() + name.GetString());
            answer.EnsureSuccessStatusCode();
            bytes += (await answer.Content.ReadAsByteArrayAsync()).Length + answer.Headers.ToString().Length
                + answer.Content.Headers.ToString().Length;
        }

        return bytes;
    }

    private static string Pages => Path.Combine(AppContext.BaseDirectory, "wwwroot");

    private static void Follow(string script, SortedSet<string> needed)
    {
        if (!needed.Add(script)) return;
        var address = new Uri(new Uri("http://pages/"), script);
        foreach (Match import in Imports().Matches(File.ReadAllText(Path.Combine(Pages, script[1..]))))
            Follow(new Uri(address, import.Groups[1].Value).AbsolutePath, needed);
    }

    [GeneratedRegex("""<script type="module" src="([^"]+)">""")]
    private static partial Regex Scripts();

    [GeneratedRegex("""<link rel="modulepreload" href="([^"]+)">""")]
    private static partial Regex Preloads();

    [GeneratedRegex("""^import [^;]*?from '([^']+)';""", RegexOptions.Multiline)]
    private static partial Regex Imports();
}
