using DxAssistant.Cases;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Browser.Tests;

/// <summary>
/// A walk on a device that has no room, keeps nothing, has the wrong time or a slow line, and over new pages of
/// the server: every answer is on the server once, and the person is told how things stand.
/// </summary>
[Collection(KeptPhone.Name)]
public sealed class StrainTests(KeptPhone phone) : IDisposable
{
    private const string Unit = "Brenholt WS single-zone wall unit";

    // As browsers answer that keep nothing (common practice, no source).
    private const string KeepsNothing = """
        const refuse = () => { throw new DOMException('kept nowhere', 'SecurityError'); };
        IDBFactory.prototype.open = refuse;
        Storage.prototype.getItem = Storage.prototype.setItem = refuse;
        delete Navigator.prototype.serviceWorker;
        delete window.caches;
        """;

    // As a browser answers to a write for which there is no room left; a bound of its own does not hold for so small a
    // write.
    private const string NoRoomLeft =
        "() => { IDBObjectStore.prototype.put = () => { throw new DOMException('no room', 'QuotaExceededError'); }; }";

    // The page's clock off by some days; what the browser itself measures with goes on.
    private const string ClockOff = """
        days => {
          const True = globalThis.trueDate ??= Date;
          globalThis.Date = class extends True {
            constructor(...given) { super(...(given.length ? given : [True.now() + days * 86_400_000])); }
            static now() { return True.now() + days * 86_400_000; }
          };
        }
        """;

    // Both in one go, so that no answer comes in between.
    private const string SentTwice = """
        () => {
          const form = document.querySelector('.own-words');
          form.requestSubmit();
          const waiting = document.querySelector('.written.waiting:not([hidden])');
          form.requestSubmit();
          return [waiting?.textContent, document.getElementById('slip-state').textContent];
        }
        """;

    private readonly Site site = phone.Site;
    private readonly Visit visit = phone.Visit;

    public void Dispose() => phone.Pages = Shipped.Pages;

    [ChromiumFact]
    public async Task Device_FullMidWalk_SaysThatAnswersAreOnThePageOnly_AndBringsThemHome()
    {
        await phone.BeginAsync();
        await visit.Context.SetOfflineAsync(true);
        await visit.Page.EvaluateAsync(NoRoomLeft);
        await visit.TapAsync(Unit);
        await visit.TapAsync("Technician");
        string line = await visit.Page.InnerTextAsync("#signal");
        await phone.HomeAsync();

        Assert.Contains("No room on this device: these answers are on this page only.", line, StringComparison.Ordinal);
        Assert.Contains("2 answers wait", line, StringComparison.Ordinal);
        Assert.Equal(["b4", "choice", "choice"], await SaidAsync());
    }

    [ChromiumFact]
    public async Task Device_FullFromTheStart_SaysSoAndTheWalkGoesOnWithSignal()
    {
        await using var full = await Visit.StartAsync("Pixel 7");
        await full.Page.GotoAsync($"{site.Address}/sign-in");
        await FillAsync(full);
        await full.OpenAsync(site.Address);
        await full.WriteAsync("b4");
        await full.Page.GetByText("This device has no room to keep what work without signal needs.").WaitForAsync();
        await full.TapAsync(Unit);

        Assert.Equal(["b4", "choice"], await SaidAsync(full));
    }

    [ChromiumFact]
    public async Task Window_ThatKeepsNothing_WalksWithSignalAndTheDevicePageSaysSo()
    {
        await using var closed = await Visit.StartAsync("Pixel 7");
        await closed.Context.AddInitScriptAsync(KeepsNothing);
        await closed.OpenAsync(site.Address);
        await closed.WriteAsync("b4");
        await closed.TapAsync(Unit);
        string[] said = await SaidAsync(closed);
        await closed.OpenAsync($"{site.Address}/device");

        Assert.Equal(["b4", "choice"], said);
        Assert.Contains("keeps nothing here", await closed.Page.InnerTextAsync("#ready"), StringComparison.Ordinal);
        Assert.Empty(closed.Errors);
        await closed.LookAsync("device-keeps-nothing");
    }

    [ChromiumFact]
    public async Task Clock_BehindAndAhead_AnswersStandInOrderAtTheTimeOfTheServer()
    {
        await phone.BeginAsync();
        var before = TimeProvider.System.GetUtcNow();
        await visit.Page.EvaluateAsync(ClockOff, -2000);
        await visit.TapAsync(Unit);
        await visit.Context.SetOfflineAsync(true);
        await visit.TapAsync("Technician");
        await visit.Page.EvaluateAsync(ClockOff, 400);
        await visit.TapAsync("Done");
        await phone.HomeAsync();

        var log = await site.ReadAsync(Id(visit));
        Assert.Equal(["b4", "choice", "choice", "choice"], await SaidAsync());
        Assert.Equal(log.Select(stored => stored.At).Order(), log.Select(stored => stored.At));
        Assert.InRange(log[^1].At, before.AddMinutes(-1), TimeProvider.System.GetUtcNow().AddMinutes(1));
    }

    // 400 ms there and back at 50 kB/s (common practice for a bad cell, no source).
    [ChromiumFact]
    public async Task Line_Slow_EachAnswerIsTakenOnceAndSaysThatItIsOnItsWay()
    {
        await phone.BeginAsync();
        var line = await visit.Context.NewCDPSessionAsync(visit.Page);
        await line.SendAsync("Network.enable");
        await line.SendAsync("Network.emulateNetworkConditions", new Dictionary<string, object>
        {
            ["offline"] = false, ["latency"] = 400, ["downloadThroughput"] = 50_000, ["uploadThroughput"] = 20_000,
        });
        await visit.Page.FillAsync("#words", "brenholt ws");
        string[] said = await visit.Page.EvaluateAsync<string[]>(SentTwice);
        Assert.Equal(["brenholt wsnot saved yet", "The last answer is still being saved."], said);
        await visit.Page.WaitForFunctionAsync("() => document.querySelectorAll('.exchange').length === 2");
        await line.DetachAsync();

        Assert.Equal(["b4", "brenholt ws"], await SaidAsync());
    }

    [ChromiumFact]
    public async Task Pages_ChangedWhileThereIsNoSignal_TheWalkComesHomeOnThoseItStoodOn()
    {
        await phone.BeginAsync();
        string old = phone.Pages.Version;
        await visit.Context.SetOfflineAsync(true);
        await visit.TapAsync(Unit);
        using var changed = new ChangedPages("roles.md", "Technician", "Service technician");
        phone.Pages = changed.Pages;
        await visit.TapAsync("Technician");
        await visit.Page.ReloadAsync();
        await visit.Page.WaitForSelectorAsync("body[data-ready=yes]");
        await phone.HomeAsync();

        var log = await site.ReadAsync(Id(visit));
        Assert.Equal(["b4", "choice", "choice"], await SaidAsync());
        Assert.Equal(old, log.Select(stored => stored.Event).OfType<Opened>().Single().ContentVersion);
        Assert.Empty(log.Select(stored => stored.Event).OfType<ContentChanged>());
    }

    // With signal the server goes on with the new pages, says so, and asks once more what it was asking.
    [ChromiumFact]
    public async Task Pages_ChangedMidWalk_IsSaidAndTheWalkGoesOnWithThem()
    {
        await phone.BeginAsync();
        await visit.TapAsync(Unit);
        using var changed = new ChangedPages("roles.md", "Technician", "Service technician");
        phone.Pages = changed.Pages;
        await visit.TapAsync("Technician");
        await visit.Page.GetByText("The pages were updated since this case began.").First.WaitForAsync();
        await visit.TapAsync("Service technician");
        await visit.TapAsync("Done");

        var log = await site.ReadAsync(Id(visit));
        Assert.Equal(["b4", "choice", "choice", "choice", "choice"], await SaidAsync());
        Assert.Equal(changed.Pages.Version, log.Select(stored => stored.Event).OfType<ContentChanged>()
            .Single().Version);
    }

    // What newer ones left behind goes with the next sheet; what is in use stays, is shown, and goes only when that is
    // meant.
    [ChromiumFact]
    public async Task Packs_OfVersionsThatNothingStandsOn_AreRemoved()
    {
        await phone.BeginAsync();
        await visit.Page.EvaluateAsync("""
            async () => {
              for (const name of ['engine left', 'pages left']) {
                const note = { version: 'left', root: '/offline/left/', bytes: 1, at: 1 };
                await (await caches.open(name)).put('/offline/whole', new Response(JSON.stringify(note)));
              }
            }
            """);
        await phone.BeginAsync();
        await visit.Page.EvaluateAsync("""
            async () => {
              for (let look = 0; look < 400 && (await caches.keys()).some(name => name.endsWith(' left')); look++) {
                await new Promise(resolve => { setTimeout(resolve, 50); });
              }
            }
            """);

        string[] kept = await visit.Page.EvaluateAsync<string[]>("caches.keys()");
        Assert.Single(kept, name => name.StartsWith("engine ", StringComparison.Ordinal));
        Assert.Contains(kept, name => name.StartsWith("pages ", StringComparison.Ordinal));
        await visit.OpenAsync($"{site.Address}/device");
        Assert.Matches(@"Engine\s+[0-9.,]+ MB", await visit.Page.InnerTextAsync("#kept"));
        await visit.Page.ClickAsync("#remove");
        Assert.Equal("Remove it: no work without signal", await visit.Page.TextContentAsync("#remove"));
        Assert.Equal(kept, await visit.Page.EvaluateAsync<string[]>("caches.keys()"));
    }

    // A newer program that waits is told to take over where a sheet begins or none is open, and nowhere else.
    [ChromiumFact]
    public async Task Program_NewerOneWaiting_TakesOverBetweenCasesOnly()
    {
        await using var other = await Visit.StartAsync("Pixel 7");
        await other.Context.AddInitScriptAsync("""
            globalThis.told = [];
            ServiceWorkerContainer.prototype.register = async () => ({ waiting: { postMessage: line => told.push(line) } });
            """);
        await other.OpenAsync(site.Address);
        Assert.Equal(["take over"], await ToldAsync());
        await other.WriteAsync("b4");
        await other.Page.ReloadAsync();
        await other.ReadyAsync();
        Assert.Empty(await ToldAsync());
        await other.OpenAsync($"{site.Address}/cases");
        Assert.Equal(["take over"], await ToldAsync());

        Task<string[]> ToldAsync() =>
            other.Page.EvaluateAsync<string[]>(
                "async () => { await new Promise(requestAnimationFrame); return told; }");
    }

    // The browser's own bound of what the site may keep, for as long as the session lasts.
    private async Task FillAsync(Visit at)
    {
        var session = await at.Context.NewCDPSessionAsync(at.Page);
        await session.SendAsync("Storage.overrideQuotaForOrigin", new Dictionary<string, object>
        {
            ["origin"] = site.Address, ["quotaSize"] = 1,
        });
    }

    private static string Id(Visit at) => new Uri(at.Page.Url).Segments[^1];

    private async Task<string[]> SaidAsync(Visit? at = null) =>
        [.. (await site.ReadAsync(Id(at ?? visit))).Select(stored => stored.Event).OfType<Said>()
            .Select(said => said.Body switch
        {
            MessageBody.Words words => words.Text,
            MessageBody.Choice => "choice",
            _ => "",
        }).Where(body => body.Length > 0)];
}
