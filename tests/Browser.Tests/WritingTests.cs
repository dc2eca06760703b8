using System.Text.Json;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>
/// Writing pages in a browser: by keys alone, looked through as one types, nothing lost, handed in as a proposal.
/// </summary>
public sealed class WritingTests : IDisposable
{
    private const string Page = "checks/fan-plug.md";
    private readonly PagesOnDisk files = new();

    public void Dispose() => files.Dispose();

    [ChromiumTheory]
    [InlineData("Pixel 7", ColorScheme.Light)]
    [InlineData("Pixel 7", ColorScheme.Dark)]
    [InlineData(null, ColorScheme.Light)]
    [InlineData(null, ColorScheme.Dark)]
    public async Task Screens_AreAccessibleAndNothingSticksOut(string? device, ColorScheme shade)
    {
        await using var site = await Site.StartAsync(files);
        await using var visit = await Visit.StartAsync(device, shade);
        await OpenAsync(visit, site);
        await WriteAsync(visit, "who: technician", "who: technican");
        await visit.Page.WaitForSelectorAsync("#wrong .wrong");
        await visit.Page.ClickAsync("#changes-fold > summary");
        await visit.Page.WaitForSelectorAsync("#changes ins");
        await visit.LookAsync("write");

        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Write “technician” instead" }).ClickAsync();
        await visit.Page.WaitForFunctionAsync(
            "() => document.getElementById('wrong-state').textContent === 'Nothing is wrong.'");
        await WriteAsync(visit, "Press it home", "Press it well home");
        await visit.Page.ClickAsync("#walk-fold > summary");
        await visit.Page.WaitForSelectorAsync("#walk .walk-keys button");
        await Look.UsableAsync(visit, "write-walk");

        await visit.Page.GotoAsync($"{site.Address}/pages");
        await visit.Page.WaitForSelectorAsync("body[data-ready]");
        await visit.LookAsync("library");

        await OpenAsync(visit, site);
        await HandInAsync(visit, "Asks it more shortly");
        await visit.LookAsync("proposal");
        await visit.Page.GotoAsync($"{site.Address}/proposals");
        await visit.Page.WaitForSelectorAsync("#rows tr");
        await visit.LookAsync("proposals");
        Assert.Empty(visit.Errors);
    }

    [ChromiumFact]
    public async Task Text_AfterAReloadAndWithoutConnection_IsStillThere()
    {
        await using var site = await Site.StartAsync(files);
        await using var visit = await Visit.StartAsync();
        await OpenAsync(visit, site);
        await WriteAsync(visit, "# ", "# Before the reload: ");
        await OpenAsync(visit, site);
        Assert.Contains("# Before the reload: ", await visit.Page.InputValueAsync("#text"), StringComparison.Ordinal);

        await visit.Page.WaitForSelectorAsync("body[data-kept=yes]");
        await visit.Context.SetOfflineAsync(true);
        await WriteAsync(visit, "# Before", "# Offline, before");
        await visit.Page.WaitForFunctionAsync(
            "() => document.getElementById('wrong-state').textContent.startsWith('No connection')");
        await visit.Page.ReloadAsync();
        await visit.Page.WaitForSelectorAsync("body[data-ready]");
        Assert.Contains("# Offline, before", await visit.Page.InputValueAsync("#text"), StringComparison.Ordinal);

        await visit.Page.FillAsync("#note", "Said without connection");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Hand in for review" }).ClickAsync();
        await visit.Page.WaitForFunctionAsync(
            "() => document.getElementById('hand-in-state').textContent.includes('kept on this device')");
        await visit.Context.SetOfflineAsync(false);
        await visit.Page.ReloadAsync();
        await visit.Page.WaitForSelectorAsync("body[data-ready]");
        Assert.Equal("Said without connection", await visit.Page.InputValueAsync("#note"));
    }

    // 2.1.1 Keyboard, 2.1.2 No keyboard trap.
    [ChromiumFact]
    public async Task Keys_Alone_WriteMendAndHandIn()
    {
        await using var site = await Site.StartAsync(files);
        await using var visit = await Visit.StartAsync();
        await OpenAsync(visit, site);
        await TabToAsync(visit, "#text");
        await visit.Page.Keyboard.PressAsync("Control+Home");
        for (int line = 0; line < 2; line++) await visit.Page.Keyboard.PressAsync("ArrowDown");
        await visit.Page.Keyboard.PressAsync("End");
        await visit.Page.Keyboard.TypeAsync("x");
        await visit.Page.WaitForSelectorAsync("#wrong .wrong-place");
        await TabToAsync(visit, "#wrong .wrong-place");
        await visit.Page.Keyboard.PressAsync("Enter");
        Assert.Equal("text", await visit.Page.EvaluateAsync<string>("document.activeElement.id"));
        await visit.Page.EvaluateAsync("document.getElementById('text').setSelectionRange(0, 0)");
        await visit.Page.Keyboard.PressAsync("Control+z");
        await visit.Page.WaitForFunctionAsync(
            "() => document.getElementById('wrong-state').textContent === 'Nothing is wrong.'");
        await visit.Page.Keyboard.PressAsync("Control+End");
        await visit.Page.Keyboard.TypeAsync("\nMore.\n");
        await visit.Page.WaitForSelectorAsync("#pages input");
        await TabToAsync(visit, "#note");
        await visit.Page.Keyboard.TypeAsync("By keys");
        await visit.Page.Keyboard.PressAsync("Tab");
        await visit.Page.Keyboard.PressAsync("Enter");
        await visit.Page.WaitForURLAsync("**/proposals/1");
    }

    [ChromiumFact]
    public async Task Page_ChangedByOthersMeanwhile_IsShownAndCarriedOver()
    {
        await using var site = await Site.StartAsync(files);
        await using var visit = await Visit.StartAsync();
        await OpenAsync(visit, site);
        await WriteAsync(visit, "# ", "# Mine: ");
        files.Change(Page, text => text + "\nTheirs.\n");
        await visit.Page.FillAsync("#note", "Mine");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Hand in for review" }).ClickAsync();
        await visit.Page.WaitForSelectorAsync("#since ins");
        await visit.PictureAsync("since");
        Assert.Empty((await visit.Page.RunAxe()).Violations);

        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Carry what I wrote over to it" }).ClickAsync();
        await visit.Page.WaitForFunctionAsync("() => document.getElementById('text').value.includes('Theirs.')");
        Assert.Contains("# Mine: ", await visit.Page.InputValueAsync("#text"), StringComparison.Ordinal);
        await HandInAsync(visit, "Mine");
        Assert.DoesNotContain("-Theirs.", await File.ReadAllTextAsync(Path.Combine(files.Proposals, "0001.patch")),
            StringComparison.Ordinal);
        Assert.DoesNotContain("Mine", await File.ReadAllTextAsync(files.PathOf(Page)), StringComparison.Ordinal);
    }

    [ChromiumFact]
    public async Task Proposal_TakenBack_CanBeGoneOnWith()
    {
        await using var site = await Site.StartAsync(files);
        await using var visit = await Visit.StartAsync();
        await OpenAsync(visit, site);
        await WriteAsync(visit, "# ", "# Again: ");
        await HandInAsync(visit, "Again");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Take it back" }).ClickAsync();
        await visit.Page.WaitForFunctionAsync("() => document.getElementById('state').textContent === 'Taken back.'");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Go on writing" }).ClickAsync();
        await visit.Page.WaitForURLAsync("**/pages/write/**");
        await visit.Page.WaitForFunctionAsync("() => document.getElementById('text').value.includes('# Again: ')");
    }

    [ChromiumFact]
    public async Task Page_WithAnotherIdAndAnotherTakenOut_AreOneProposal()
    {
        await using var site = await Site.StartAsync(files);
        await using var visit = await Visit.StartAsync("Pixel 7");
        await visit.Page.GotoAsync($"{site.Address}/pages/write/faults/fan-plug-loose.md");
        await visit.Page.WaitForSelectorAsync("body[data-ready]");
        await visit.Page.ClickAsync("#page-keys > summary");
        await visit.Page.FillAsync("#new-id", "fan-motor-failed");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Give it this id on all pages" }).ClickAsync();
        await visit.Page.WaitForFunctionAsync(
            "() => document.getElementById('rename-state').textContent.includes('is there already')");
        await Look.UsableAsync(visit, "write-other-id");
        await visit.Page.FillAsync("#new-id", "plug-not-home");
        await visit.Page.Keyboard.PressAsync("Enter");
        await visit.Page.WaitForURLAsync("**/pages/write/faults/plug-not-home.md");
        await visit.Page.WaitForFunctionAsync(
            "() => document.getElementById('wrong-state').textContent === 'Nothing is wrong.'");

        await visit.Page.GotoAsync($"{site.Address}/pages/write/cautions/live-mains.md");
        await visit.Page.WaitForSelectorAsync("body[data-ready]");
        await visit.Page.ClickAsync("#page-keys > summary");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Take this page out" }).ClickAsync();
        await visit.Page.WaitForFunctionAsync(
            "() => document.getElementById('wrong-state').textContent.includes('error')");
        Assert.True(await visit.Page.IsDisabledAsync("#text"));
        Assert.Contains("cautions/live-mains.md (taken out)", await visit.Page.TextContentAsync("#pages"),
            StringComparison.Ordinal);
        Assert.Contains("Nothing is seen of it any more", await visit.Page.TextContentAsync("#page"),
            StringComparison.Ordinal);
        await Look.UsableAsync(visit, "write-taken-out");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Put the page back as it was" }).ClickAsync();
        await visit.Page.WaitForFunctionAsync(
            "() => document.getElementById('wrong-state').textContent === 'Nothing is wrong.'");

        await HandInAsync(visit, "A better name");
        Assert.Contains("faults/fan-plug-loose.md (taken out)", await visit.Page.TextContentAsync("#pages"),
            StringComparison.Ordinal);
        Assert.Contains("+++ /dev/null", await File.ReadAllTextAsync(Path.Combine(files.Proposals, "0001.patch")),
            StringComparison.Ordinal);
        Assert.DoesNotContain(visit.Errors, error => !error.Contains("400", StringComparison.Ordinal));
    }

    // Markup of a page is shown, and a link in it cannot run anything.
    [ChromiumFact]
    public async Task Markup_InAPage_StaysWords()
    {
        await using var site = await Site.StartAsync(files);
        await using var visit = await Visit.StartAsync();
        bool alerted = false;
        visit.Page.Dialog += (_, dialog) => { alerted = true; _ = dialog.DismissAsync(); };
        await OpenAsync(visit, site);
        await visit.Page.FillAsync("#text",
            "# A\n<img src=x onerror=alert(1)><script>alert(2)</script>\n\n[go](javascript:alert(3)) "
                + "![x](http://localhost/x.png)\n");
        await visit.Page.WaitForFunctionAsync("() => document.getElementById('page').textContent.includes('onerror')");
        await visit.Page.ClickAsync("#page a");
        Assert.Equal(0, await visit.Page.Locator("main script").CountAsync());
        Assert.False(alerted);
    }

    private static async Task OpenAsync(Visit visit, Site site)
    {
        await visit.Page.GotoAsync($"{site.Address}/pages/write/{Page}");
        await visit.Page.WaitForSelectorAsync("body[data-ready]");
    }

    // As typing does, at the first place that reads so.
    private static async Task WriteAsync(Visit visit, string what, string instead) =>
        await visit.Page.EvaluateAsync($$"""
        (() => { const text = document.getElementById('text'), at = text.value.indexOf({{JsonSerializer.Serialize(what)}});
          text.focus(); text.setSelectionRange(at, at + {{what.Length}});
          document.execCommand('insertText', false, {{JsonSerializer.Serialize(instead)}}); })()
        """);

    private static async Task HandInAsync(Visit visit, string note)
    {
        await visit.Page.FillAsync("#note", note);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Hand in for review" }).ClickAsync();
        await visit.Page.WaitForURLAsync("**/proposals/*");
        await visit.Page.WaitForSelectorAsync("body[data-ready]");
    }

    private static async Task TabToAsync(Visit visit, string selector)
    {
        for (int i = 0; i < 60; i++)
        {
            if (await visit.Page.EvaluateAsync<bool>("s => document.activeElement.matches(s)", selector)) return;
            await visit.Page.Keyboard.PressAsync("Tab");
        }

        Assert.Fail($"the Tab key does not lead to {selector}");
    }
}
