using DxAssistant.Cases;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Browser.Tests;

/// <summary>A case goes on without signal, and its answers come home: each once, none lost.</summary>
[Collection(KeptPhone.Name)]
public sealed class AwayTests(KeptPhone phone) : IAsyncLifetime
{
    private readonly Site site = phone.Site;
    private readonly Visit visit = phone.Visit;

    public Task InitializeAsync() => phone.BeginAsync();

    public Task DisposeAsync() => Task.CompletedTask;

    [ChromiumFact]
    public async Task SignalLostAndReloadedAtEveryStep_TheWalkGoesOnAndComesHomeOnce()
    {
        await visit.Context.SetOfflineAsync(true);
        string[] taps = ["Brenholt WS single-zone wall unit", "Technician", "Why this?", "Done", "Done"];
        foreach (string tap in taps)
        {
            await visit.TapAsync(tap);
            await visit.Page.ReloadAsync();
            await visit.Page.WaitForSelectorAsync("body[data-ready=yes]");
        }

        Assert.Equal(taps.Length, await visit.Page.GetByText("kept here, not sent yet").CountAsync());
        Assert.Contains("5 answers wait", await visit.Page.InnerTextAsync("#signal"), StringComparison.Ordinal);
        string sheet = await LinesAsync();
        await visit.PictureAsync("away-waiting");
        await visit.Context.SetOfflineAsync(false);
        await phone.WaitingAsync(0);

        Assert.Equal(taps.Length + 1, await TurnsAsync());
        Assert.StartsWith("Step 3 of", await visit.Page.TextContentAsync("#slip-question"), StringComparison.Ordinal);
        Assert.Equal(sheet, await LinesAsync());
        Assert.Equal(0, await visit.Page.GetByText("kept here, not sent yet").CountAsync());
    }

    [ChromiumFact]
    public async Task WholeWalkWithoutSignal_ClosesTheCaseAndComesHomeAsItWas()
    {
        await visit.Context.SetOfflineAsync(true);
        await visit.OpenAsync(site.Address);
        var walk = new PlugWalk(visit);
        while (!await walk.IsOverAsync()) await walk.AnswerAsync();
        string sheet = await LinesAsync();
        await phone.HomeAsync();
        await visit.Page.ReloadAsync();
        await visit.Page.WaitForSelectorAsync("body[data-ready=yes]");

        Assert.Equal(sheet, await LinesAsync());
        Assert.Equal(walk.Answers, await TurnsAsync());
        Assert.Equal("closed", await visit.Page.GetAttributeAsync("#slip", "data-kind"));
        await visit.Page.GotoAsync(visit.Page.Url + "/sheet");
        await visit.Page.GetByText("Compressor plug or lead loose").First.WaitForAsync();
    }

    // Over a whole walk: lost before one answer, back before the next.
    [ChromiumFact]
    public async Task SignalComesAndGoesAtEveryStep_EachAnswerIsThereOnce()
    {
        await visit.OpenAsync(site.Address);
        var walk = new PlugWalk(visit);
        await walk.AnswerAsync();
        await KeptPhone.ReadyAsync(visit.Page);
        for (bool isAway = true; !await walk.IsOverAsync(); isAway = !isAway)
        {
            await visit.Context.SetOfflineAsync(isAway);
            if (!isAway) await phone.WaitingAsync(0);
            await walk.AnswerAsync();
        }

        await phone.HomeAsync();
        Assert.Equal("closed", await walk.KindAsync());
        Assert.Equal(walk.Answers, await TurnsAsync());
    }

    [ChromiumFact]
    public async Task AnswersGivenWhileAllIsFetched_AreKnownHereToo()
    {
        await visit.Page.EvaluateAsync(
            "caches.keys().then(names => Promise.all(names.filter(name => !name.startsWith('page ')).map(name => "
                + "caches.delete(name))))");
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("b4");
        await visit.TapAsync("Brenholt WS single-zone wall unit");
        await visit.TapAsync("Technician");
        await KeptPhone.ReadyAsync(visit.Page);
        await visit.Context.SetOfflineAsync(true);
        await visit.TapAsync("Done");
        Assert.Equal(1, await visit.Page.GetByText("kept here, not sent yet").CountAsync());
        await visit.Context.SetOfflineAsync(false);
        await phone.WaitingAsync(0);

        Assert.Equal(4, await TurnsAsync());
    }

    [ChromiumFact]
    public async Task SheetBegunWithoutSignal_IsOnTheServerLater()
    {
        await visit.Context.SetOfflineAsync(true);
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("indoor fan does not turn");
        string id = Id();
        await visit.OpenAsync($"{site.Address}/case/{id}/job");
        Assert.StartsWith("No connection to the server.", await visit.Page.InnerTextAsync("#trouble"),
            StringComparison.Ordinal);
        await visit.OpenAsync($"{site.Address}/work");
        await visit.Page.Locator($"a[href='/case/{id}']").ClickAsync();
        await visit.Page.Locator(".pen", new() { HasText = "indoor fan does not turn" }).WaitForAsync();
        await visit.Context.SetOfflineAsync(false);
        await phone.WaitingAsync(0);

        Assert.Equal(["indoor fan does not turn"], await SaidAsync(id));
    }

    [ChromiumFact]
    public async Task SomebodyElseAnswered_ThePersonDecidesAndNothingIsLost()
    {
        await visit.Context.SetOfflineAsync(true);
        await visit.WriteAsync("Brenholt WS");
        await visit.WriteAsync("technician");
        await site.SayAsync(Id(), "Tarn");
        await visit.Context.SetOfflineAsync(false);
        var box = visit.Page.Locator(".crossing");
        await box.WaitForAsync();
        await visit.PictureAsync("away-crossed");
        Assert.Equal(["b4", "Tarn"], await SaidAsync());
        Assert.Contains("Tarn", await box.InnerTextAsync(), StringComparison.Ordinal);
        Assert.Contains("Brenholt WS", await box.InnerTextAsync(), StringComparison.Ordinal);

        await box.GetByText("Put mine on a sheet of their own").ClickAsync();
        string first = Id();
        await visit.Page.WaitForURLAsync(url => !url.EndsWith(first, StringComparison.Ordinal));
        await visit.Page.WaitForSelectorAsync("body[data-ready=yes]");

        Assert.Equal(["b4", "Brenholt WS", "technician"], await SaidAsync());
        Assert.Equal(["b4", "Tarn"], await SaidAsync(first));
    }

    [ChromiumFact]
    public async Task SomebodyElseAnswered_WritingBelowHandsBackWhatNoLongerFits()
    {
        await visit.Context.SetOfflineAsync(true);
        await visit.WriteAsync("Brenholt WS");
        await visit.WriteAsync("technician");
        await site.SayAsync(Id(), "Brenholt WS");
        await visit.Context.SetOfflineAsync(false);
        await visit.Page.Locator(".crossing").GetByText("Write mine below").ClickAsync();
        await phone.WaitingAsync(0);

        Assert.Equal(["b4", "Brenholt WS"], await SaidAsync());
        string line = await visit.Page.InnerTextAsync("#signal");
        Assert.Contains("“Brenholt WS”, “technician”", line, StringComparison.Ordinal);
    }

    [ChromiumFact]
    public async Task TwoWindowsWithoutSignal_ShareOneCourse()
    {
        var other = await visit.Context.NewPageAsync();
        await other.GotoAsync(visit.Page.Url);
        await KeptPhone.ReadyAsync(other);
        await visit.Context.SetOfflineAsync(true);
        await visit.WriteAsync("Brenholt WS");
        await other.Locator("text=kept here, not sent yet").WaitForAsync();
        await other.FillAsync("#words", "technician");
        await other.PressAsync("#words", "Enter");
        await other.WaitForFunctionAsync("() => document.querySelectorAll('.exchange').length === 3");
        await visit.Context.SetOfflineAsync(false);
        await phone.WaitingAsync(0);
        await other.WaitForSelectorAsync("body[data-waiting='0']");
        await other.CloseAsync();

        Assert.Equal(["b4", "Brenholt WS", "technician"], await SaidAsync());
    }

    private string Id() => new Uri(visit.Page.Url).Segments[^1];

    private async Task<int> TurnsAsync() => (await site.ReadAsync(Id())).Select(stored => stored.Event).OfType<Said>()
        .Select(said => said.TurnId).Distinct().Count() - 1;

    private async Task<string> LinesAsync() =>
        string.Join('\n', await visit.Page.Locator(".asked, .pen").AllInnerTextsAsync());

    private async Task<string[]> SaidAsync(string? id = null) =>
        [.. (await site.ReadAsync(id ?? Id())).Select(stored => stored.Event).OfType<Said>()
            .Select(said => said.Body).OfType<DxAssistant.Conversation.Messages.MessageBody.Words>()
            .Select(words => words.Text)];
}
