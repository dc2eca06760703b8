using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using DxAssistant.Server.Simulating;
using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>
/// A day at the desk, in three browsers: Tom begins at the unit, Dora takes the call and goes on by keys, Dina watches
/// the list, claims and prints, and Dora decides.
/// </summary>
public sealed partial class DeskDayTests
{
    private const string Serial = "BW24071532";

    // Drawn once: what is true of the unit stays true.
    private readonly HiddenUnit unit = new(
        Shipped.Pages.Library!,
        new SimulatedCase("room-sensor-code", "brenholt-ws", "technician", "sensor-room-air", 20261126));

    [ChromiumFact]
    public async Task Day_FromTheUnitToTheDecision_ThreePeopleOneCase()
    {
        await using var crew = await Crew.StartAsync("dora", inUse: () => Shipped.Pages);
        await using var dina = await crew.VisitAsync("dina");
        await dina.Page.GotoAsync($"{crew.Site.Address}/work");
        await dina.Page.GetByText("No sheet fits.").WaitForAsync();

        string id = await TakeTheCallAsync(crew, dina);
        await WalkAsync(crew, dina, id);
        string claim = await ClaimAsync(dina, id);
        await DecideAsync(crew.Other, crew.Site.Address, claim);
        await PrintAsync(crew.Other);
        await HandInAgainAsync(dina);

        foreach (var visit in new[] { crew.Tom, crew.Other, dina })
            Assert.DoesNotContain(visit.Errors, error => !Refused().IsMatch(error));
    }

    // Tom says what is wrong and gives the words; Dora asks on by keys; each sees what the other answers.
    private async Task<string> TakeTheCallAsync(Crew crew, Visit dina)
    {
        string code = await crew.OfferAsync("code b4, room air sensor, Brenholt WS");
        await dina.Page.Locator("#rows a").WaitForAsync();
        await crew.JoinAsync(code);
        await crew.BackToSheetAsync();
        await crew.Other.Page.GetByRole(AriaRole.Link, new() { Name = "Phone" }).ClickAsync();
        await crew.Other.Page.Locator("body[data-ready=yes] .aloud").WaitForAsync();
        await KeysUntilAsync(crew.Other, "Who is at the unit?");
        await crew.Other.PictureAsync("day-call");
        await crew.Other.Page.Locator("[data-pick]", new() { HasText = "Technician" }).First.WaitForAsync();
        await crew.Other.Page.Keyboard.PressAsync("2");
        await crew.Tom.Page.Locator(".exchange .by-whom", new() { HasText = "dora, desk" }).WaitForAsync();

        await crew.Tom.PictureAsync("day-handed-phone");
        await crew.Site.AnswerAsync(Id(crew.Tom), "tom", unit.Answer);
        await crew.Other.Page.GetByText("tom, technician answered.").WaitForAsync();
        await crew.Other.PictureAsync("day-call-followed");
        return Id(crew.Tom);
    }

    // The rest is answered as a unit with that fault and its technician would, and all three see it come.
    private async Task WalkAsync(Crew crew, Visit dina, string id)
    {
        while (await crew.Site.AnswerAsync(id, "tom", unit.Answer))
        {
        }

        await crew.Other.Page.GetByText("This case is closed.").WaitForAsync();
        await dina.Page.Locator("#rows td", new() { HasText = "repaired" }).WaitForAsync();
        await dina.Page.Locator("#rows td", new() { HasText = "Room air sensor failed" }).WaitForAsync();
        await crew.Tom.PictureAsync("day-walked-phone");
        await dina.PictureAsync("day-work");
    }

    // Dina finds it by keys and begins the claim from its sheet.
    private static async Task<string> ClaimAsync(Visit dina, string id)
    {
        await dina.Page.Keyboard.PressAsync("/");
        await dina.Page.Keyboard.TypeAsync("brenholt sensor");
        await dina.Page.WaitForURLAsync("**/work?find=brenholt*");
        await dina.Page.GetByText("1 sheet fits.").WaitForAsync();
        await dina.Page.Keyboard.PressAsync("Enter");
        await dina.Page.WaitForURLAsync($"**/case/{id}");
        await dina.Page.GotoAsync($"{dina.Page.Url}/sheet");
        await PressAsync(dina, "Claim");
        await PressAsync(dina, "Yes, begin a claim");
        await dina.Page.WaitForURLAsync("**/claim/*");
        await PressTwiceAsync(dina, "Make ready");
        await dina.Page.Locator(".hindered li").First.WaitForAsync();
        await dina.PictureAsync("day-claim-draft", whole: true);
        await dina.Page.FillAsync("[name=serial]", Serial);
        await dina.Page.FillAsync("[name=installed]", DateTime.UtcNow.AddMonths(-6)
            .ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        await PressAsync(dina, "Write the unit down");
        await dina.Page.Locator("dd", new() { HasText = Serial }).WaitForAsync();
        await PressTwiceAsync(dina, "Make ready");
        await PressTwiceAsync(dina, "Submit");
        await dina.Page.Locator("dd", new() { HasText = "Submitted" }).WaitForAsync();
        return Id(dina);
    }

    private static async Task DecideAsync(Visit dora, string address, string claim)
    {
        await dora.Page.GotoAsync($"{address}/claims");
        await dora.Page.Locator($"a[href='/claim/{claim}']").ClickAsync();
        await dora.Page.FillAsync("#why", "Proof is whole");
        await PressTwiceAsync(dora, "Approve");
        await dora.Page.Locator("dd", new() { HasText = "Approved" }).First.WaitForAsync();
        await dora.PictureAsync("day-claim", whole: true);
    }

    // What is printed is the page itself; its foot stands against the logs.
    private static async Task PrintAsync(Visit dora)
    {
        byte[] pdf = await dora.Page.PdfAsync(new() { Format = "A4", Tagged = true });
        if (Environment.GetEnvironmentVariable("DX_PICTURES") is { } folder)
            await File.WriteAllBytesAsync(Path.Combine(folder, "day-claim.pdf"), pdf);
        Assert.InRange(PdfPage().Count(Encoding.Latin1.GetString(pdf)), 1, 2);
        string line = await dora.Page.TextContentAsync(".verify") ?? "";
        Assert.True(await StandsAsync(dora, line));
        Assert.False(await StandsAsync(dora, line[..^1] + (line[^1] == '0' ? '1' : '0')));
    }

    // Dina still has the page from before the decision: a decision is not made twice.
    private static async Task HandInAgainAsync(Visit dina)
    {
        await PressTwiceAsync(dina, "Decline");
        await dina.Page.Locator(".hindered p").WaitForAsync();
        await dina.Page.ReloadAsync();
        await dina.Page.Locator("dd", new() { HasText = "Approved" }).First.WaitForAsync();
    }

    private static async Task KeysUntilAsync(Visit visit, string asked)
    {
        for (int pressed = 0; pressed < 5
            && !await visit.Page.Locator(".aloud", new() { HasText = asked }).IsVisibleAsync(); pressed++)
        {
            string before = await visit.Page.TextContentAsync("#script") ?? "";
            await visit.Page.Keyboard.PressAsync("1");
            await visit.Page.WaitForFunctionAsync("was => document.getElementById('script').textContent !== was",
                before);
        }
    }

    private static string Id(Visit visit) => new Uri(visit.Page.Url).Segments[^1];

    private static Task<bool> StandsAsync(Visit visit, string line) => visit.Page.EvaluateAsync<bool>(
        "async line => (await (await fetch('/api/claims/verify?line=' + encodeURIComponent(line))).json()).genuine "
            + "=== true", line);

    private static Task PressAsync(Visit visit, string name) =>
        visit.Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true }).ClickAsync();

    // What cannot be undone is asked about on the button itself.
    private static async Task PressTwiceAsync(Visit visit, string name)
    {
        await PressAsync(visit, name);
        await PressAsync(visit, $"Yes, {name.ToLowerInvariant()}");
    }

    // The browser complains of each answer that says no; two of them are asked for on purpose.
    [GeneratedRegex("status of 4(09|22)")]
    private static partial Regex Refused();

    // ISO 32000-1, 7.7.3.3: a page object has the type Page. The writer of the browser leaves these objects readable.
    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex PdfPage();
}
