using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>A case goes on through reloads, other windows and lost connections.</summary>
public sealed class GoingOnTests
{
    [ChromiumFact]
    public async Task Reload_MidCase_ShowsTheSameSheetAndGoesOn()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync("Pixel 7");
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("compressor does not start");
        string before = await visit.Page.InnerTextAsync("#rows");

        await visit.Page.ReloadAsync();
        await visit.Page.WaitForSelectorAsync("body[data-ready=yes]");

        Assert.Equal(before, await visit.Page.InnerTextAsync("#rows"));
        await visit.TapAsync("Done");
        Assert.StartsWith(
            "Step 2 of 2.", await visit.Page.TextContentAsync("#slip-question"), StringComparison.Ordinal);
    }

    // The one thing that "back" does not undo.
    [ChromiumFact]
    public async Task StartOver_Tapped_AsksFirst()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync("Pixel 7");
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("compressor does not start");
        await visit.Page.ClickAsync(".more > summary");
        await visit.Page.ClickAsync("[data-command=start-over]");
        Assert.Equal("Yes, start over", await visit.Page.TextContentAsync("[data-command=start-over]"));
        Assert.StartsWith("Step 1 of 2.", await visit.Page.TextContentAsync("#slip-question"),
            StringComparison.Ordinal);

        await visit.TapAsync("Yes, start over");
        Assert.Equal("What is wrong?", await visit.Page.TextContentAsync("#slip-question"));
    }

    [ChromiumFact]
    public async Task Restart_MidCase_TheOpenPageGoesOn()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync("Pixel 7");
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("compressor does not start");

        await site.StopAsync();
        await site.ResumeAsync();

        await visit.TapAsync("Done");
        Assert.StartsWith(
            "Step 2 of 2.", await visit.Page.TextContentAsync("#slip-question"), StringComparison.Ordinal);
    }

    [ChromiumFact]
    public async Task NoConnection_AnswerIsKeptMarkedAndSentOnce()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync("Pixel 7");
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("compressor does not start");
        await site.StopAsync();

        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Done", Exact = true }).ClickAsync();
        await visit.Page.GetByText("is sent again in").WaitForAsync();
        Assert.Equal("not saved yet", await visit.Page.TextContentAsync(".written.waiting:not([hidden]) .unsaved"));
        await site.ResumeAsync();
        await visit.Page.WaitForFunctionAsync("() => document.querySelectorAll('.exchange').length === 2");

        Assert.StartsWith(
            "Step 2 of 2.", await visit.Page.TextContentAsync("#slip-question"), StringComparison.Ordinal);
        Assert.Equal(0, await visit.Page.Locator(".written.waiting:not([hidden])").CountAsync());
    }

    [ChromiumFact]
    public async Task NoConnection_PageIsReloadedBeforeItIsBack_TheAnswerIsStillSent()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync("Pixel 7");
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("compressor does not start");
        await site.StopAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Done", Exact = true }).ClickAsync();
        await visit.Page.GetByText("is sent again in").WaitForAsync();
        await site.ResumeAsync();

        await visit.Page.ReloadAsync();
        await visit.Page.WaitForFunctionAsync("() => document.querySelectorAll('.exchange').length === 2");

        Assert.StartsWith(
            "Step 2 of 2.", await visit.Page.TextContentAsync("#slip-question"), StringComparison.Ordinal);
    }

    [ChromiumTheory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task TwoWindows_StaleAnswer_IsNotTakenForTheOpenQuestion(bool typed)
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync();
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("compressor does not start");
        var other = await visit.Context.NewPageAsync();

        // As on another device: no word passes between the two windows but through the server.
        await other.AddInitScriptAsync("delete window.BroadcastChannel");
        await other.GotoAsync(visit.Page.Url);
        await other.WaitForSelectorAsync("body[data-ready=yes]");
        await visit.Page.EvaluateAsync(
            "() => { Object.defineProperty(document, 'hidden', { value: true }); document.dispatchEvent(new "
                + "Event('visibilitychange')); }");
        await other.GetByRole(AriaRole.Button, new() { Name = "Done", Exact = true }).ClickAsync();
        await other.WaitForFunctionAsync("() => document.querySelectorAll('.exchange').length === 2");

        if (typed) await visit.WriteAsync("done");
        else await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Done", Exact = true }).ClickAsync();
        await visit.Page.GetByText("perhaps in another window").First.WaitForAsync();

        Assert.StartsWith(
            "Step 2 of 2.", await visit.Page.TextContentAsync("#slip-question"), StringComparison.Ordinal);
        Assert.Equal(3, await visit.Page.Locator(".exchange").CountAsync());
    }

    [ChromiumFact]
    public async Task TwoWindows_OneAnswers_TheOtherFollows()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync();
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("compressor does not start");
        var other = await visit.Context.NewPageAsync();
        await other.GotoAsync(visit.Page.Url);
        await other.WaitForSelectorAsync("body[data-ready=yes]");

        await visit.TapAsync("Done");

        await other.WaitForFunctionAsync("() => document.querySelectorAll('.exchange').length === 2");
        Assert.StartsWith("Step 2 of 2.", await other.TextContentAsync("#slip-question"), StringComparison.Ordinal);
    }

    [ChromiumFact]
    public async Task UnknownCase_SaysSoInALine()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync();

        await visit.Page.GotoAsync($"{site.Address}/case/nobody-knows");
        await visit.Page.Locator("#trouble:not([hidden])").WaitForAsync();

        Assert.StartsWith(
            "There is no such case here.", await visit.Page.TextContentAsync("#trouble"), StringComparison.Ordinal);
    }
}
