using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using DxAssistant.Cases.Accounts;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Server.Accounts;

namespace DxAssistant.Bot.Tests.Server.Accounts;

/// <summary>A running server with one account of each role, all with the same password.</summary>
internal sealed class Company : IAsyncDisposable
{
    public const string Password = "eleven blue kettles";

    // Made once: a hash is slow on purpose.
    private static readonly Account[] People =
    [
        SignIn.Make("ada", AccountRoles.Administrator, Password), SignIn.Make("tom", AccountRoles.Technician, Password),
        SignIn.Make("tilda", AccountRoles.Technician, Password), SignIn.Make("dora", AccountRoles.Desk, Password),
        SignIn.Make("aron", AccountRoles.Author, Password),
    ];

    private readonly List<HttpClient> clients = [];

    private Company(RunningServer server, AccountBook book) => (Server, Book) = (server, book);

    public RunningServer Server { get; }

    public AccountBook Book { get; }

    public static Task<Company> StartAsync() => StartAsync(RunningServer.StartAsync);

    /// <summary>With a folder of pages for authors.</summary>
    public static Task<Company> StartAsync(string pages, string proposals) =>
        StartAsync(book => RunningServer.StartAsync(pages, proposals, book));

    private static async Task<Company> StartAsync(Func<AccountBook, Task<RunningServer>> start)
    {
        var book = SqliteAccounts.InMemory(TimeProvider.System);
        foreach (var account in People) book.Add(account);
        return new Company(await start(book), book);
    }

    /// <summary>Somebody's browser, before they signed in.</summary>
    public HttpClient Browser()
    {
        var handler = new HttpClientHandler { CookieContainer = new CookieContainer(), AllowAutoRedirect = false };
        var client = new HttpClient(handler) { BaseAddress = Server.Http.BaseAddress };
        clients.Add(client);
        return client;
    }

    /// <summary>The browser of somebody who signed in.</summary>
    public async Task<HttpClient> BrowserOfAsync(string name)
    {
        var browser = Browser();
        using var answer = await SignInAsync(browser, name, Password);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return browser;
    }

    public static Task<HttpResponseMessage> SignInAsync(HttpClient browser, string name, string password) =>
        browser.PostAsJsonAsync("/api/session", new { name, password });

    public static async Task<string> OpenCaseAsync(HttpClient browser)
    {
        using var answer = await browser.PostAsync("/api/cases", null);
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        return (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("id").GetString()!;
    }

    public static async Task<HttpStatusCode> StatusAsync(HttpClient browser, string path)
    {
        using var answer = await browser.GetAsync(path);
        return answer.StatusCode;
    }

    public async ValueTask DisposeAsync()
    {
        clients.ForEach(client => client.Dispose());
        await Server.DisposeAsync();
    }
}
