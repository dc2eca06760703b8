using DxAssistant.Cases.Accounts;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Server.Accounts;
using DxAssistant.Server.Serving;
using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>A site with accounts, and two people at it: Tom with his phone at the unit, Dora at the desk.</summary>
internal sealed class Crew : IAsyncDisposable
{
    private const string Password = "eleven blue kettles";

    // Made once: a hash is slow on purpose.
    private static readonly Account[] People =
    [
        SignIn.Make("tom", AccountRoles.Technician, Password), SignIn.Make("tilda", AccountRoles.Technician, Password),
        SignIn.Make("dora", AccountRoles.Desk, Password), SignIn.Make("dina", AccountRoles.Desk, Password),
    ];

    private Crew(Site site, Visit tom, Visit other) => (Site, Tom, Other) = (site, tom, other);

    public Site Site { get; }

    /// <summary>On the phone.</summary>
    public Visit Tom { get; }

    /// <summary>At a desk.</summary>
    public Visit Other { get; }

    /// <param name="other">Who is at the desk.</param>
    /// <param name="inUse">The content; null for the script.</param>
    public static async Task<Crew> StartAsync(string other, ColorScheme shade = ColorScheme.Light,
        Func<InUse>? inUse = null)
    {
        var book = SqliteAccounts.InMemory(TimeProvider.System);
        foreach (var person in People) book.Add(person);
        var site = await Site.StartAsync(book, inUse);
        var crew = new Crew(site, await Visit.StartAsync("Pixel 7", shade), await Visit.StartAsync(shade: shade));
        await SignInAsync(crew.Tom, site.Address, "tom");
        await SignInAsync(crew.Other, site.Address, other);
        return crew;
    }

    /// <summary>Tom begins a sheet, and gets words to say.</summary>
    public async Task<string> OfferAsync(string complaint)
    {
        await Tom.OpenAsync(Site.Address);
        await Tom.WriteAsync(complaint);
        await Tom.Page.GetByRole(AriaRole.Link, new() { Name = "Hand over" }).ClickAsync();
        await Tom.Page.GetByRole(AriaRole.Button, new() { Name = "Get words to say" }).ClickAsync();
        return (await Tom.Page.TextContentAsync(".code"))!;
    }

    /// <summary>Back to the sheet.</summary>
    public async Task BackToSheetAsync()
    {
        await Tom.Page.GetByRole(AriaRole.Link, new() { Name = "Its sheet" }).ClickAsync();
        await Tom.Page.WaitForSelectorAsync("body[data-ready=yes]");
    }

    /// <summary>The other joins by the words, with the keyboard alone.</summary>
    public async Task JoinAsync(string code)
    {
        await Other.OpenAsync($"{Site.Address}/join");
        await Other.Page.Keyboard.TypeAsync(code);
        await Other.Page.Keyboard.PressAsync("Enter");
        await Other.Page.WaitForURLAsync("**/case/*");
        await Other.Page.WaitForSelectorAsync("body[data-ready=yes]");
    }

    public async ValueTask DisposeAsync()
    {
        await Tom.DisposeAsync();
        await Other.DisposeAsync();
        await Site.DisposeAsync();
    }

    /// <summary>Somebody else's browser, signed in.</summary>
    public async Task<Visit> VisitAsync(string name)
    {
        var visit = await Visit.StartAsync();
        await SignInAsync(visit, Site.Address, name);
        return visit;
    }

    private static async Task SignInAsync(Visit visit, string address, string name)
    {
        await visit.Page.GotoAsync($"{address}/sign-in?then=/cases");
        await visit.Page.FillAsync("#name", name);
        await visit.Page.FillAsync("#password", Password);
        await visit.Page.PressAsync("#password", "Enter");
        await visit.Page.WaitForURLAsync("**/cases");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = $"Sign out {name}" }).WaitForAsync();
    }
}
