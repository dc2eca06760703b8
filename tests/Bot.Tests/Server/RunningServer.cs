using System.Net;
using System.Text;
using System.Text.Json;
using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Cases;
using DxAssistant.Cases.Accounts;
using DxAssistant.Conversation.Sheets;
using DxAssistant.Server.Accounts;
using DxAssistant.Server.Serving;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace DxAssistant.Bot.Tests.Server;

/// <summary>The real server on a free port of this machine.</summary>
internal sealed class RunningServer : IAsyncDisposable
{
    private readonly WebApplication app;

    private RunningServer(WebApplication app, ICaseStore store)
    {
        this.app = app;
        Store = store;
        Http = new HttpClient { BaseAddress = new Uri(app.Urls.First()) };
    }

    public HttpClient Http { get; }

    public ICaseStore Store { get; }

    /// <summary>Everything that has an address.</summary>
    public IEnumerable<RouteEndpoint> Endpoints =>
        app.Services.GetRequiredService<IEnumerable<EndpointDataSource>>().SelectMany(s => s.Endpoints)
            .OfType<RouteEndpoint>();

    public static Task<RunningServer> StartAsync(IResponder? responder = null, params string[] serviceUrls) =>
        StartAsync(new MemoryCaseStore(TimeProvider.System), responder ?? new EchoResponder(), serviceUrls);

    public static Task<RunningServer> StartAsync(ICaseStore store, IResponder responder, params string[] serviceUrls) =>
        StartAsync(store, responder,
            new ServerSettings(IPAddress.Loopback, 0, [.. serviceUrls.Select(url => new Uri(url))]));

    /// <param name="pace">Requests a second that one client may make; 0 for no limit.</param>
    public static Task<RunningServer> StartAtPaceAsync(int pace) => StartAsync(
        new MemoryCaseStore(TimeProvider.System), new EchoResponder(),
        new ServerSettings(IPAddress.Loopback, 0, [], pace));

    /// <summary>With accounts: see <see cref="Book"/>.</summary>
    public static Task<RunningServer> StartAsync(AccountBook book) => StartAsync(
        new MemoryCaseStore(TimeProvider.System), new EchoResponder(), new ServerSettings(IPAddress.Loopback, 0, []),
        book);

    /// <summary>With accounts, where a proxy in front has the certificate.</summary>
    public static Task<RunningServer> StartBehindProxyAsync(AccountBook book) => StartAsync(
        new MemoryCaseStore(TimeProvider.System), new EchoResponder(), new ServerSettings(IPAddress.Loopback, 0, [])
        {
            BehindProxy = true,
        }, book);

    /// <summary>With accounts, and people who sign in at their company.</summary>
    public static Task<RunningServer> StartAsync(AccountBook book, CompanySettings company) => StartAsync(
        new MemoryCaseStore(TimeProvider.System), new EchoResponder(), new ServerSettings(IPAddress.Loopback, 0, [])
        {
            Company = company,
        }, book);

    /// <summary>With a folder of pages for authors.</summary>
    public static Task<RunningServer> StartAsync(string pages, string proposals, AccountBook? book = null) =>
        StartAsync(
            new MemoryCaseStore(TimeProvider.System), new EchoResponder(),
            new ServerSettings(IPAddress.Loopback, 0, []) { PagesFolder = pages, Proposals = proposals }, book);

    /// <summary>With a folder of pages for authors, however fast one client asks.</summary>
    public static Task<RunningServer> StartWithoutPaceAsync(string pages, string proposals) => StartAsync(
        new MemoryCaseStore(TimeProvider.System), new EchoResponder(),
        new ServerSettings(IPAddress.Loopback, 0, [], 0) { PagesFolder = pages, Proposals = proposals });

    /// <summary>On pages, with what is kept beside the cases.</summary>
    public static Task<RunningServer> StartAsync(InUse inUse, ICaseStore? store = null, DeskBooks? books = null) =>
        StartAsync(
            store ?? new MemoryCaseStore(TimeProvider.System), inUse, new ServerSettings(IPAddress.Loopback, 0, []),
            books: books);

    private static Task<RunningServer> StartAsync(
        ICaseStore store, IResponder responder, ServerSettings settings, AccountBook? book = null) =>
        StartAsync(store, new InUse(responder, TitleBook.Empty, "test"), settings, book);

    private static async Task<RunningServer> StartAsync(
        ICaseStore store, InUse inUse, ServerSettings settings, AccountBook? book = null, DeskBooks? books = null)
    {
        var app = ChatServer.Build(settings, store, () => inUse, book, books);
        await app.StartAsync();
        return new RunningServer(app, store);
    }

    public async Task<(HttpStatusCode Status, JsonElement Json)> PostAsync(
        string path, string body, string type = "application/json")
    {
        using var content = new StringContent(body, Encoding.UTF8, type);
        using var response = await Http.PostAsync(path, content);
        return (response.StatusCode, await JsonOf(response));
    }

    public async Task<(HttpStatusCode Status, JsonElement Json)> GetAsync(string path)
    {
        using var response = await Http.GetAsync(path);
        return (response.StatusCode, await JsonOf(response));
    }

    public async Task<string> OpenCaseAsync() =>
        (await PostAsync("/api/cases", "")).Json.GetProperty("id").GetString()!;

    public async ValueTask DisposeAsync()
    {
        Http.Dispose();
        await app.DisposeAsync();
        await Store.DisposeAsync();
    }

    private static async Task<JsonElement> JsonOf(HttpResponseMessage response)
    {
        string text = await response.Content.ReadAsStringAsync();
        return text.Length == 0 ? default : JsonDocument.Parse(text).RootElement.Clone();
    }
}
