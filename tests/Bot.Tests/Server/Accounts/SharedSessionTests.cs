using System.Net;
using System.Net.Http.Json;
using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Cases.Accounts;
using DxAssistant.Server.Accounts;

namespace DxAssistant.Bot.Tests.Server.Accounts;

/// <summary>Several servers on one book of accounts: whoever signed in at one is signed in at all.</summary>
public abstract class SharedSessionTests
{
    /// <summary>
    /// A place for a book, with nothing in it; each call of what is given opens the same book anew, as another server
    /// would.
    /// </summary>
    protected abstract Func<AccountBook> NewBook();

    [StoreFact]
    public async Task SignIn_AtOneServer_IsGoodAtTheOther_AndSignOutEndsBoth()
    {
        var open = NewBook();
        open().Add(SignIn.Make("tom", AccountRoles.Technician, Company.Password));
        await using var one = await RunningServer.StartAsync(open());
        await using var other = await RunningServer.StartAsync(open());
        string cookie = await CookieAsync(one);

        Assert.Equal("tom", await WhoAsync(one, cookie));
        Assert.Equal("tom", await WhoAsync(other, cookie));

        Assert.Equal(HttpStatusCode.OK, (await SendAsync(other, HttpMethod.Delete, cookie)).StatusCode);
        Assert.Null(await WhoAsync(one, cookie));
    }

    // Both made a key before either knew of the other's.
    [StoreFact]
    public async Task SignIn_AtServersThatBeganTogether_IsGoodAtTheOther()
    {
        var open = NewBook();
        open().Add(SignIn.Make("tom", AccountRoles.Technician, Company.Password));
        await using var one = await RunningServer.StartAsync(open());
        await using var other = await RunningServer.StartAsync(open());
        string[] cookies = await Task.WhenAll(CookieAsync(one), CookieAsync(other));

        Assert.Equal("tom", await WhoAsync(other, cookies[0]));
        Assert.Equal("tom", await WhoAsync(one, cookies[1]));
    }

    [StoreFact]
    public async Task Session_ServerStartedAnew_GoesOn()
    {
        var open = NewBook();
        open().Add(SignIn.Make("tom", AccountRoles.Technician, Company.Password));
        string cookie;
        await using (var before = await RunningServer.StartAsync(open())) cookie = await CookieAsync(before);
        await using var after = await RunningServer.StartAsync(open());

        Assert.Equal("tom", await WhoAsync(after, cookie));
    }

    [StoreFact]
    public async Task Session_OfAnotherBook_IsWorthNothing()
    {
        var (open, elsewhere) = (NewBook(), NewBook());
        foreach (var book in new[] { open(), elsewhere() })
            book.Add(SignIn.Make("tom", AccountRoles.Technician, Company.Password));
        await using var one = await RunningServer.StartAsync(open());
        await using var other = await RunningServer.StartAsync(elsewhere());

        Assert.Null(await WhoAsync(other, await CookieAsync(one)));
    }

    private static async Task<string> CookieAsync(RunningServer server)
    {
        using var answer = await Company.SignInAsync(server.Http, "tom", Company.Password);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return Assert.Single(answer.Headers.GetValues("Set-Cookie")).Split(';')[0];
    }

    private static async Task<string?> WhoAsync(RunningServer server, string cookie)
    {
        using var answer = await SendAsync(server, HttpMethod.Get, cookie);
        return (await answer.Content.ReadFromJsonAsync<SessionView>())!.Name;
    }

    // A client of its own: those of the servers keep cookies themselves.
    private static async Task<HttpResponseMessage> SendAsync(RunningServer server, HttpMethod method, string cookie)
    {
        using var client = new HttpClient(new HttpClientHandler { UseCookies = false });
        using var request = new HttpRequestMessage(method, new Uri(server.Http.BaseAddress!, "/api/session"));
        request.Headers.Add("Cookie", cookie);
        return await client.SendAsync(request);
    }
}
