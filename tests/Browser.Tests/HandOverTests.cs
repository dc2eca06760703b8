using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>A case goes on at two places at once: on the phone at the unit and at the desk.</summary>
public sealed class HandOverTests
{
    private const string Complaint = "compressor does not start";

    [ChromiumFact]
    public async Task HandOver_ByWordsAndKeysAlone_BothSeeEachAnswerAndByWhom()
    {
        await using var crew = await Crew.StartAsync("tilda");
        string code = await crew.OfferAsync(Complaint);
        await crew.Tom.PictureAsync("hand-over-phone", whole: true);
        await crew.JoinAsync(code);
        await crew.BackToSheetAsync();

        await crew.Other.TapAsync("Done");
        await crew.Tom.Page.GetByText("tilda, technician").First.WaitForAsync();
        await WrittenAsync(crew.Tom, 2);
        await crew.Tom.TapAsync("Done");
        await WrittenAsync(crew.Other, 3);
        await crew.Tom.PictureAsync("handed-phone", whole: true);
        await crew.Other.PictureAsync("handed-desk", whole: true);

        string[] both = ["tom, technician", "tilda, technician", "tom, technician"];
        Assert.Equal(both, await ByWhomAsync(crew.Tom));
        Assert.Equal(both, await ByWhomAsync(crew.Other));
        // A phone has the open question on the slip alone, so what is shown differs, and what is written does not.
        string? sheet = await crew.Tom.Page.TextContentAsync("#rows");
        foreach (var visit in new[] { crew.Tom, crew.Other })
        {
            await visit.Page.ReloadAsync();
            await visit.Page.WaitForSelectorAsync("body[data-ready=yes]");
            Assert.Equal(sheet, await visit.Page.TextContentAsync("#rows"));
            Assert.Empty(visit.Errors);
        }
    }

    [ChromiumFact]
    public async Task TwoAnswerAtOnce_TheSecondSeesTheFirstAndBothAreKept()
    {
        await using var crew = await Crew.StartAsync("dora");
        await crew.JoinAsync(await crew.OfferAsync(Complaint));
        await crew.BackToSheetAsync();
        var held = new TaskCompletionSource();
        await crew.Other.Page.RouteAsync("**/turns", async route =>
        {
            await held.Task;
            await route.ContinueAsync();
        });

        await crew.Other.Page.GetByRole(AriaRole.Button, new() { Name = "Done", Exact = true }).ClickAsync();
        await crew.Tom.TapAsync("Done");
        held.SetResult();
        await crew.Other.Page.GetByText("tom, technician answered first.").WaitForAsync();
        await WrittenAsync(crew.Tom, 3);
        await crew.Other.PictureAsync("at-once-desk");

        string[] both = ["tom, technician", "tom, technician", "dora, desk"];
        Assert.Equal(both, await ByWhomAsync(crew.Other));
        Assert.Equal(both, await ByWhomAsync(crew.Tom));
        Assert.StartsWith("Step 2 of 2.", await crew.Other.Page.TextContentAsync("#slip-question"),
            StringComparison.Ordinal);
        Assert.StartsWith("Step 2 of 2.", await crew.Tom.Page.TextContentAsync("#slip-question"),
            StringComparison.Ordinal);
    }

    [ChromiumFact]
    public async Task Typed_NotSent_OutlivesAReloadAndAnAnswerOfTheOther()
    {
        await using var crew = await Crew.StartAsync("dora");
        await crew.JoinAsync(await crew.OfferAsync(Complaint));
        await crew.BackToSheetAsync();
        await crew.Tom.Page.FillAsync("#words", "the fuse is warm");

        await crew.Tom.Page.ReloadAsync();
        await crew.Tom.Page.WaitForSelectorAsync("body[data-ready=yes]");
        Assert.Equal("the fuse is warm", await crew.Tom.Page.InputValueAsync("#words"));
        await crew.Other.TapAsync("Done");
        await WrittenAsync(crew.Tom, 2);
        Assert.Equal("the fuse is warm", await crew.Tom.Page.InputValueAsync("#words"));

        await crew.Other.TapAsync("Done");
        await WrittenAsync(crew.Tom, 3);
        await crew.Tom.Page.FillAsync("#reading-0", "1.2");
        await crew.Other.Page.FillAsync("#reading-0", "1.1");
        await crew.Other.Page.PressAsync("#reading-0", "Enter");
        await crew.Tom.Page.GetByText("Not sent, because the question was answered meanwhile: U–V 1.2").WaitForAsync();
    }

    [ChromiumFact]
    public async Task AnsweredWithoutSignal_BearsTheNameOfWhoeverAnswered()
    {
        await using var crew = await Crew.StartAsync("dora", inUse: () => Shipped.Pages);
        string code = await crew.OfferAsync("b4");
        await crew.JoinAsync(code);
        await crew.BackToSheetAsync();
        await crew.Tom.Page.WaitForSelectorAsync("body[data-away=ready]");

        await crew.Tom.Context.SetOfflineAsync(true);
        await crew.Tom.TapAsync("Brenholt WS single-zone wall unit");
        Assert.Equal("tom, technician", (await ByWhomAsync(crew.Tom))[^1]);
        await crew.Tom.Context.SetOfflineAsync(false);
        await WrittenAsync(crew.Other, 2);

        Assert.Equal(["tom, technician", "tom, technician"], await ByWhomAsync(crew.Other));
    }

    [ChromiumTheory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Pages_OfTheHandOver_AreAccessible(ColorScheme shade)
    {
        await using var crew = await Crew.StartAsync("tilda", shade);
        await crew.OfferAsync(Complaint);
        await crew.Tom.LookAsync("job-hand-over", ".shown *");
        await crew.Tom.OpenAsync($"{crew.Site.Address}/join");
        await crew.Tom.Page.Keyboard.TypeAsync("no such code");
        await crew.Tom.Page.Keyboard.PressAsync("Enter");
        await crew.Tom.Page.GetByText("That code is not valid").WaitForAsync();
        await crew.Tom.LookAsync("join-refused");
        await crew.Other.OpenAsync($"{crew.Site.Address}/join#amber-bridge-tulip-zebra");
        Assert.Equal("amber bridge tulip zebra", await crew.Other.Page.InputValueAsync("#code"));
        Assert.EndsWith("/join", crew.Other.Page.Url, StringComparison.Ordinal);
        await crew.Other.LookAsync("join");
    }

    private static async Task WrittenAsync(Visit visit, int answers) =>
        await visit.Page.WaitForFunctionAsync("n => document.querySelectorAll('.exchange').length === n", answers);

    private static async Task<string[]> ByWhomAsync(Visit visit) => await visit.Page.EvaluateAsync<string[]>(
        "[...document.querySelectorAll('.exchange .by-whom')].map(name => name.lastChild.textContent)");
}
