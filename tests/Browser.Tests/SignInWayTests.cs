using DxAssistant.Cases.Accounts;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Server.Accounts;

namespace DxAssistant.Browser.Tests;

/// <summary>Whatever a link says, signing in ends on this server.</summary>
public sealed class SignInWayTests
{
    private const string Password = "eleven blue kettles";

    [ChromiumTheory]
    [InlineData("/cases", "/cases")]
    [InlineData("/.//elsewhere.example/x", "//elsewhere.example/x")]
    [InlineData("//elsewhere.example/x", "/")]
    [InlineData("/\\elsewhere.example/x", "/")]
    [InlineData("https://elsewhere.example/", "/")]
    [InlineData("javascript:alert(1)", "/")]
    [InlineData("http://[", "/")]
    public async Task SignIn_ByALink_EndsHere(string then, string path)
    {
        var book = SqliteAccounts.InMemory(TimeProvider.System);
        book.Add(SignIn.Make("tom", AccountRoles.Technician, Password));
        await using var site = await Site.StartAsync(book, null);
        await using var visit = await Visit.StartAsync();
        await visit.Page.GotoAsync($"{site.Address}/sign-in?then={Uri.EscapeDataString(then)}");
        await visit.Page.FillAsync("#name", "tom");
        await visit.Page.FillAsync("#password", Password);

        await visit.Page.PressAsync("#password", "Enter");

        await visit.Page.WaitForURLAsync(url => !url.Contains("/sign-in", StringComparison.Ordinal));
        Assert.StartsWith(site.Address + path, visit.Page.Url, StringComparison.Ordinal);
    }

    // Who only writes pages has no job sheet to begin with: the pages are where the work is, and nothing is refused on
    // the way.
    [ChromiumFact]
    public async Task SignIn_AsAuthor_LeadsToThePages()
    {
        var book = SqliteAccounts.InMemory(TimeProvider.System);
        book.Add(SignIn.Make("amy", AccountRoles.Author, Password));
        await using var site = await Site.StartAsync(book, null);
        await using var visit = await Visit.StartAsync();
        var refused = new List<string>();
        visit.Page.Response += (_, answer) =>
        {
            if (answer.Status is 401 or 403) refused.Add(answer.Url);
        };
        await visit.Page.GotoAsync($"{site.Address}/sign-in");
        await visit.Page.FillAsync("#name", "amy");
        await visit.Page.FillAsync("#password", Password);

        await visit.Page.PressAsync("#password", "Enter");

        await visit.Page.WaitForURLAsync("**/pages");
        await visit.Page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Sign out amy" })
            .WaitForAsync();
        Assert.Equal(0, await visit.Page.Locator(".frame-links a[href='/']").CountAsync());
        Assert.Empty(refused);
    }
}
