using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>
/// Anybody can use the page: with a thumb, with keys alone, with a screen reader, with large text.
/// Source of the criteria: WCAG 2.2, level AA (numbers beside each).
/// </summary>
public sealed class ReachTests
{
    // 2.5.8 asks for 24 pixels; gloves ask for 48 (common practice).
    [ChromiumFact]
    public async Task Thumb_EveryTargetIsLargeEnough()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync("Pixel 7");
        await visit.WalkToReadingsAsync(site);
        await visit.Page.EvaluateAsync("document.querySelectorAll('details').forEach(d => d.open = true)");

        string[] small = await visit.Page.EvaluateAsync<string[]>("""
            [...document.querySelectorAll('a[href], button, input, summary')]
              .filter(e => e.checkVisibility() && !e.classList.contains('jump'))
              .map(e => [e, e.getBoundingClientRect()])
              .filter(([, box]) => box.height < 47.9 || box.width < 47.9)
              .map(([e, box]) => `${e.tagName} ${e.textContent} ${box.width} × ${box.height}`)
            """);

        Assert.Empty(small);
    }

    // 2.1.1 Keyboard, 2.4.3 Focus order, 2.4.7 Focus visible.
    [ChromiumFact]
    public async Task Keys_WholeWalkWithoutAPointer()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync();
        await visit.OpenAsync(site.Address);
        await visit.Page.Keyboard.PressAsync("Tab");
        Assert.Equal("To the open question", await FocusedAsync(visit));
        await visit.Page.Keyboard.PressAsync("Enter");

        await visit.AnswerAsync(async () =>
        {
            await TabToAsync(visit, "#words");
            await visit.Page.Keyboard.TypeAsync("compressor does not start");
            await visit.Page.Keyboard.PressAsync("Enter");
        });
        await PressAsync(visit, "[data-key=done]");
        await PressAsync(visit, "[data-key=done]");
        await TabToAsync(visit, "#reading-0");
        await visit.AnswerAsync(async () =>
        {
            await visit.Page.Keyboard.TypeAsync("1.2");
            await visit.Page.Keyboard.PressAsync("Enter");
        });

        Assert.Equal("Is the repair done?", await FocusedAsync(visit));
    }

    // 2.4.3 Focus order: after each answer the focus is on the new question, never lost.
    [ChromiumFact]
    public async Task Focus_AfterAnAnswer_IsOnTheNewQuestion()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync();
        await visit.OpenAsync(site.Address);

        await visit.WriteAsync("compressor does not start");
        Assert.StartsWith("Step 1 of 2.", await FocusedAsync(visit), StringComparison.Ordinal);
        await visit.TapAsync("Why this?");
        Assert.StartsWith("Step 1 of 2.", await FocusedAsync(visit), StringComparison.Ordinal);
    }

    // 2.4.3 Focus order: whatever is done by keys, the focus is on something afterwards.
    [ChromiumFact]
    public async Task Focus_AfterEveryAct_IsNeverLost()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync("Pixel 7");
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("compressor does not start");
        await HeldAsync("an answer");
        foreach (string selector in new[] { "#fold", "#fold", ".cautions-above", ".belief > summary", ".more > summary",
            "#rows .quiet" })
        {
            await TabToAsync(visit, selector);
            await visit.Page.Keyboard.PressAsync("Enter");
            await HeldAsync(selector);
        }

        foreach (string command in new[] { "why", "skip" }) await PressAsync(visit, $"[data-command={command}]");
        await HeldAsync("a command");
        await TabToAsync(visit, "#words");
        await visit.Page.Keyboard.PressAsync("Enter");
        await HeldAsync("nothing written");
        await site.SayAsync(new Uri(visit.Page.Url).Segments[^1], "done");
        await visit.Page.WaitForFunctionAsync(
            "() => document.querySelector('#slip-question').textContent.startsWith('Step 2')");
        await HeldAsync("an answer of somebody else");

        async Task HeldAsync(string after) =>
            Assert.False(await visit.Page.EvaluateAsync<bool>("document.activeElement === document.body"),
                $"the focus is lost after {after}");
    }

    // 1.3.2 Meaningful sequence: what a screen reader reads, in the order in which it reads it.
    [ChromiumFact]
    public async Task Order_ForAScreenReader_IsHeadThenSheetThenQuestionThenAnswers()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync("Pixel 7");
        await visit.WalkToReadingsAsync(site);

        string read = await visit.Page.Locator("body").AriaSnapshotAsync();

        string[] order =
        [
            "link \"To the open question\"", "banner", "heading \"Job sheet", "navigation \"Sheets\"", "main",
            "region \"Sheet\"", "Line 1", "Answer:",
            "Line 2", "Line 3", "Caution", "region \"Open question\"", "heading \"What do the three windings read?\"",
            "textbox \"U–V",
            "button \"Write the readings down\"", "textbox \"In your own words\"", "button \"Back\"",
            "log \"New lines\"",
        ];
        int[] places = [.. order.Select((part, i) =>
            read.IndexOf(part, i == 0 ? 0 : Math.Max(0, read.IndexOf(order[i - 1], StringComparison.Ordinal)),
                StringComparison.Ordinal))];
        Assert.True(places.All(place => place >= 0)
            && places.SequenceEqual(places.Order()), $"{string.Join(", ", places)}\n{read}");
    }

    // 4.1.3 Status messages: new lines are read once, not again when the page catches up or is loaded anew.
    [ChromiumFact]
    public async Task Voice_LinesThatWereRead_AreNotReadAgain()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync("Pixel 7");
        await visit.OpenAsync(site.Address);
        await visit.Page.EvaluateAsync("""
            window.reads = [];
            new MutationObserver(seen => reads.push(...seen.flatMap(one => [...one.addedNodes].map(node => node.textContent))))
              .observe(document.getElementById('voice'), { childList: true });
            """);
        await visit.WriteAsync("compressor does not start");
        await visit.TapAsync("Why this?");
        for (int turned = 0; turned < 2; turned++)
        {
            await visit.Page.RunAndWaitForResponseAsync(
                () => visit.Page.EvaluateAsync("document.dispatchEvent(new Event('visibilitychange'))"),
                answer => answer.Url.Contains("/api/cases/", StringComparison.Ordinal));
        }

        Assert.Equal(2, (await visit.Page.EvaluateAsync<string[]>("reads")).Length);
        await visit.Page.ReloadAsync();
        await visit.Page.WaitForSelectorAsync("body[data-ready=yes]");
        Assert.Equal("", await visit.Page.TextContentAsync("#voice"));
    }

    // 4.1.3 Status messages: new lines are read once.
    [ChromiumFact]
    public async Task Voice_NewLines_AreInTheLiveRegionOnce()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync();
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("compressor does not start");

        string spoken = (await visit.Page.TextContentAsync("#voice"))!;

        Assert.Contains(
            "Caution: Mains voltage through the body can stop the heart.", spoken, StringComparison.Ordinal);
        Assert.Equal(1, await visit.Page.Locator("#voice p").CountAsync());
        Assert.DoesNotContain("Is this done?", spoken, StringComparison.Ordinal);
    }

    [ChromiumFact]
    public async Task Words_ThatLookLikeMarkup_StayWords()
    {
        const string words = "<img src=x onerror=alert(1)><script>alert(2)</script>";
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync();
        bool alerted = false;
        visit.Page.Dialog += (_, dialog) => { alerted = true; _ = dialog.DismissAsync(); };
        await visit.OpenAsync(site.Address);

        await visit.WriteAsync(words);

        Assert.Equal(words, await visit.Page.TextContentAsync(".pen"));
        Assert.Equal(0, await visit.Page.Locator("main img, main script").CountAsync());
        Assert.False(alerted);
    }

    [ChromiumTheory]
    [InlineData("", "Nothing is written yet.")]
    [InlineData("   ", "Nothing is written yet.")]
    [InlineData("long", "That is too long: 100000 characters.")]
    public async Task Words_ThatCannotBeSent_SayWhyAndStay(string words, string line)
    {
        string typed = words == "long" ? new string('x', 100_000) : words;
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync();
        await visit.OpenAsync(site.Address);

        await visit.Page.FillAsync("#words", typed);
        await visit.Page.PressAsync("#words", "Enter");

        Assert.StartsWith(line, await visit.Page.TextContentAsync("#slip-state"), StringComparison.Ordinal);
        Assert.Equal(typed, await visit.Page.InputValueAsync("#words"));
        Assert.Equal(0, await visit.Page.Locator(".exchange").CountAsync());
    }

    [ChromiumFact]
    public async Task Keys_MinusAndOpenCircuit_FillTheField()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync();
        await visit.WalkToReadingsAsync(site);

        await visit.Page.FillAsync("#reading-0", "5");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Minus, U–V" }).ClickAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "OL, open circuit, V–W" }).ClickAsync();

        Assert.Equal("-5", await visit.Page.InputValueAsync("#reading-0"));
        Assert.Equal("OL", await visit.Page.InputValueAsync("#reading-1"));
        Assert.Equal("decimal", await visit.Page.GetAttributeAsync("#reading-0", "inputmode"));
    }

    [ChromiumFact]
    public async Task Pad_UnderTheThumb_FillsTheFieldsWithoutAKeyboard()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync("Pixel 7");
        await visit.WalkToReadingsAsync(site);
        Assert.Equal("none", await visit.Page.GetAttributeAsync("#reading-0", "inputmode"));

        foreach (string key in new[] { "1", ".", "2", "5", "clear", "kΩ", "minus", "minus" })
            await PadAsync(visit, key);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Next", Exact = true }).ClickAsync();
        await PadAsync(visit, "OL");
        await visit.PictureAsync("pad-phone");

        Assert.Equal("1.2 kΩ", await visit.Page.InputValueAsync("#reading-0"));
        Assert.Equal("OL", await visit.Page.InputValueAsync("#reading-1"));
        await visit.Page.FillAsync("#reading-2", "2.1k");
        Assert.Equal("true", await visit.Page.GetAttributeAsync("[data-pad='kΩ']", "aria-pressed"));
        Assert.False(await visit.Page.Locator(".field:has(#reading-2) .unit")
            .IsVisibleAsync(), "the unit that was typed is the one that counts");
        Assert.Empty((await visit.Page.RunAxe()).Violations);
    }

    [ChromiumFact]
    public async Task Question_Focused_RingCoversNeitherItsNumberNorItsAnswers()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync("Pixel 7");
        await visit.WalkToReadingsAsync(site);

        var ring = await BoxAsync(visit, "#slip-question");
        var number = await BoxAsync(visit, ".slip-head .label");
        float offset = await visit.Page.EvaluateAsync<float>(
            "parseFloat(getComputedStyle(document.getElementById('slip-question')).outlineOffset)");

        Assert.True(ring.Y >= number.Y + number.Height,
            $"the question begins at {ring.Y}, its number ends at {number.Y + number.Height}");
        Assert.True(offset < 0, "the ring is drawn outside the question's own box");
    }

    [ChromiumTheory]
    [InlineData("/device")]
    [InlineData("/cases")]
    [InlineData("/")]
    public async Task Page_InSunlight_IsBlackOnWhiteAndAccessible(string path)
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync("Pixel 7", ColorScheme.Dark);
        await visit.OpenAsync(site.Address + path);
        await visit.Page.EvaluateAsync("localStorage.setItem('setting sun', 'on')");
        await visit.Page.ReloadAsync();
        await visit.ReadyAsync();
        await visit.LookAsync("sun" + path.Replace('/', '-').TrimEnd('-'), "#kept dd");

        Assert.Equal("rgb(255, 255, 255)",
            await visit.Page.EvaluateAsync<string>("getComputedStyle(document.body).backgroundColor"));
        Assert.False(await visit.Page.Locator("#shade").IsVisibleAsync(), "black on white has no dark paper");
        Assert.Equal("rgb(0, 0, 0)", await visit.Page.EvaluateAsync<string>("getComputedStyle(document.body).color"));
    }

    private static Task PadAsync(Visit visit, string key) => visit.Page.ClickAsync($"[data-pad='{key}']");

    private static async Task<LocatorBoundingBoxResult> BoxAsync(Visit visit, string selector) =>
        (await visit.Page.Locator(selector).BoundingBoxAsync())!;

    [ChromiumTheory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Details_AllOpened_StayAccessible(ColorScheme shade)
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync("Pixel 7", shade);
        await visit.WalkToReadingsAsync(site);
        await visit.Page.FillAsync("#reading-0", "1.2");
        await visit.TapAsync("Write the readings down");
        await visit.Page.EvaluateAsync("document.querySelectorAll('details').forEach(d => d.open = true)");
        foreach (var button in await visit.Page.GetByRole(
            AriaRole.Button, new() { NameRegex = new("^Sources of line") }).AllAsync()) await button.ClickAsync();
        await visit.PictureAsync($"details-{shade}", whole: true);

        var result = await visit.Page.RunAxe();

        Assert.True(
            result.Violations.Length == 0,
            string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Nodes[0].Html}")));
        Assert.Contains(
            "Calculation “winding-balance”", await visit.Page.InnerTextAsync("#rows"), StringComparison.Ordinal);
    }

    private static Task<string> FocusedAsync(Visit visit) =>
        visit.Page.EvaluateAsync<string>("document.activeElement.textContent");

    private static Task PressAsync(Visit visit, string selector) => visit.AnswerAsync(async () =>
    {
        await TabToAsync(visit, selector);
        await visit.Page.Keyboard.PressAsync("Enter");
    });

    private static async Task TabToAsync(Visit visit, string selector)
    {
        for (int i = 0; i < 40; i++)
        {
            if (await visit.Page.EvaluateAsync<bool>("s => document.activeElement.matches(s)", selector)) return;
            await visit.Page.Keyboard.PressAsync("Tab");
        }

        Assert.Fail($"the Tab key does not lead to {selector}");
    }
}
