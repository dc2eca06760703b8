namespace DxAssistant.Browser.Tests;

/// <summary>
/// A whole walk over the shipped pages, answered by what the page offers. A plug that is off is seen, pressed home
/// and tried: the shortest way to a case that is closed with a cure.
/// </summary>
internal sealed class PlugWalk(Visit visit)
{
    private const int MostAnswers = 120;

    /// <summary>How many answers were given.</summary>
    public int Answers { get; private set; }

    public async Task<string> KindAsync() => (await visit.Page.GetAttributeAsync("#slip", "data-kind"))!;

    /// <summary>Whether the case is closed, or no answer leads to that.</summary>
    public async Task<bool> IsOverAsync() => Answers >= MostAnswers || await KindAsync() == "closed";

    /// <summary>Answers the open question.</summary>
    public async Task AnswerAsync()
    {
        Answers++;
        await (await KindAsync() switch
        {
            "complaint" => visit.WriteAsync("compressor won't start"),
            "role" => visit.AnswerAsync(() => visit.Page.ClickAsync("[data-key=technician]")),
            "series" => visit.AnswerAsync(() => visit.Page.ClickAsync("[data-key=brenholt-ws]")),
            _ => visit.AnswerAsync(GiveAsync),
        });
    }

    // A dead circuit reads 0; everything else is tapped.
    private async Task GiveAsync()
    {
        if (await visit.Page.Locator(".option").CountAsync() == 0)
        {
            foreach (var input in await visit.Page.Locator(".reading-input").AllAsync()) await input.FillAsync("0");
            await visit.Page.ClickAsync(".main");
            return;
        }

        if (await visit.Page.Locator(".instead").CountAsync() > 0)
            await visit.Page.EvaluateAsync("() => { document.querySelector('.instead').open = true; }");
        var loose = visit.Page.Locator(".option", new() { HasTextRegex = new("loose, off") });
        await (await loose.CountAsync() > 0 ? loose : visit.Page.Locator(".option")).First.ClickAsync();
    }
}
