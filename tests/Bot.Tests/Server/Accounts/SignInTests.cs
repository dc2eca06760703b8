using System.Net;
using System.Net.Http.Json;
using DxAssistant.Cases.Accounts;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Server.Accounts;
using Microsoft.AspNetCore.Identity;

namespace DxAssistant.Bot.Tests.Server.Accounts;

/// <summary>Signing in, and what ends it.</summary>
public sealed class SignInTests
{
    private static readonly string[] DeskOnly = ["desk"];

    [Theory]
    [InlineData("tom", "not the password")]
    [InlineData("nobody-here", Company.Password)]
    [InlineData("", "")]
    [InlineData("tom'; DROP TABLE account; --", Company.Password)]
    public async Task SignIn_WrongNameOrPassword_SaysTheSame(string name, string password)
    {
        await using var company = await Company.StartAsync();

        using var answer = await Company.SignInAsync(company.Browser(), name, password);

        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
        Assert.Contains("The name or the password is not right", await answer.Content.ReadAsStringAsync(),
            StringComparison.Ordinal);
        Assert.False(answer.Headers.Contains("Set-Cookie"));
    }

    [Fact]
    public async Task SignIn_ManyWrongAtOnce_LocksTheAccountEvenForTheRightPassword()
    {
        await using var company = await Company.StartAsync();
        var browser = company.Browser();

        var wrong =
            await Task.WhenAll(Enumerable.Range(0, 5).Select(_ => Company.SignInAsync(browser, "tom", "guess")));
        using var right = await Company.SignInAsync(browser, "tom", Company.Password);
        using var another = await Company.SignInAsync(browser, "tilda", Company.Password);

        Assert.All(wrong, answer => Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode));
        Assert.Equal(HttpStatusCode.Unauthorized, right.StatusCode);
        Assert.Equal(HttpStatusCode.OK, another.StatusCode);
    }

    [Fact]
    public async Task Session_Cookie_IsKeptFromScriptsAndOtherSites()
    {
        await using var company = await Company.StartAsync();

        using var answer = await Company.SignInAsync(company.Browser(), "TOM", Company.Password);
        string cookie = Assert.Single(answer.Headers.GetValues("Set-Cookie"));

        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Session_ReachedByHttps_HasACookieOfThisHostAlone()
    {
        var book = SqliteAccounts.InMemory(TimeProvider.System);
        book.Add(SignIn.Make("ada", AccountRoles.Administrator, Company.Password));
        await using var server = await RunningServer.StartBehindProxyAsync(book);

        using var answer = await Company.SignInAsync(server.Http, "ada", Company.Password);
        string cookie = Assert.Single(answer.Headers.GetValues("Set-Cookie"));

        Assert.StartsWith("__Host-dxassistant=", cookie, StringComparison.Ordinal);
        Assert.Contains("; secure", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("; path=/;", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("domain", cookie, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("password")]
    [InlineData("roles")]
    [InlineData("close")]
    [InlineData("sign-out")]
    public async Task Session_AfterAChangeOfTheAccount_IsOver(string change)
    {
        await using var company = await Company.StartAsync();
        var tom = await company.BrowserOfAsync("tom");
        var ada = await company.BrowserOfAsync("ada");

        using var done = change switch
        {
            "password" => await ada.PatchAsJsonAsync("/api/accounts/tom", new { password = "another long password" }),
            "roles" => await ada.PatchAsJsonAsync("/api/accounts/tom", new { roles = DeskOnly }),
            "close" => await ada.PatchAsJsonAsync("/api/accounts/tom", new { open = false }),
            _ => await tom.DeleteAsync("/api/session"),
        };

        Assert.True(done.IsSuccessStatusCode, await done.Content.ReadAsStringAsync());
        Assert.Equal(HttpStatusCode.Unauthorized, await Company.StatusAsync(tom, "/api/cases"));
    }

    // Whoever copied the cookie before has nothing; other browsers of the same person go on.
    [Fact]
    public async Task Session_SignedOut_ItsCookieIsWorthNothing()
    {
        await using var company = await Company.StartAsync();
        var phone = await company.BrowserOfAsync("tom");
        using var answer = await Company.SignInAsync(company.Browser(), "tom", Company.Password);
        string cookie = Assert.Single(answer.Headers.GetValues("Set-Cookie")).Split(';')[0];
        Assert.Equal(HttpStatusCode.OK, await StatusWithAsync(company, "GET", "/api/cases", cookie));

        await StatusWithAsync(company, "DELETE", "/api/session", cookie);

        Assert.Equal(HttpStatusCode.Unauthorized, await StatusWithAsync(company, "GET", "/api/cases", cookie));
        Assert.Equal(HttpStatusCode.OK, await Company.StatusAsync(phone, "/api/cases"));
    }

    [Fact]
    public async Task SignIn_AgainInTheSameBrowser_EndsTheSessionBefore()
    {
        await using var company = await Company.StartAsync();
        var browser = company.Browser();
        using var first = await Company.SignInAsync(browser, "tom", Company.Password);
        string cookie = Assert.Single(first.Headers.GetValues("Set-Cookie")).Split(';')[0];

        using var second = await Company.SignInAsync(browser, "tom", Company.Password);

        Assert.Equal(HttpStatusCode.OK, second.StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, await StatusWithAsync(company, "GET", "/api/cases", cookie));
    }

    [Fact]
    public async Task Password_ChangedByItsOwner_EndsAllOtherSessions()
    {
        await using var company = await Company.StartAsync();
        var (phone, desk) = (await company.BrowserOfAsync("tom"), company.Browser());

        using var wrong = await ChangeAsync(desk, "not the password", "another long password");
        using var weak = await ChangeAsync(desk, Company.Password, "short");
        using var done = await ChangeAsync(desk, Company.Password, "another long password");

        Assert.Equal((HttpStatusCode.Unauthorized, HttpStatusCode.UnprocessableEntity, HttpStatusCode.OK),
            (wrong.StatusCode, weak.StatusCode, done.StatusCode));
        Assert.Equal(HttpStatusCode.OK, await Company.StatusAsync(desk, "/api/cases"));
        Assert.Equal(HttpStatusCode.Unauthorized, await Company.StatusAsync(phone, "/api/cases"));
        using var anew = await Company.SignInAsync(company.Browser(), "tom", "another long password");
        Assert.Equal(HttpStatusCode.OK, anew.StatusCode);
    }

    // A name that exists, one that does not, one of the company's and a locked one: the same answer and the same line.
    [Fact]
    public async Task SignIn_WhateverIsWrong_LeavesTheSame()
    {
        await using var company = await Company.StartAsync();
        company.Book.Add(SignIn.Make("kay", AccountRoles.Technician, null));
        for (int tried = 0; tried < 5; tried++) company.Book.CountFailure("tilda", 5, DateTimeOffset.MaxValue);
        var told = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (name, password) in new[] { ("tom", "guess"), ("nobody", "guess"), ("kay", "guess"),
            ("tilda", Company.Password) })
        {
            using var answer = await Company.SignInAsync(company.Browser(), name, password);
            told.Add($"{answer.StatusCode} {await answer.Content.ReadAsStringAsync()}");
            Assert.Equal((name, "was not let in"), (company.Book.Audit(1)[0].Who, company.Book.Audit(1)[0].Did));
        }

        Assert.Single(told);
        Assert.Equal(5, company.Book.Find("tilda")!.FailedTries);
    }

    [Fact]
    public async Task SignIn_HashOfFewerRounds_IsMadeAnew()
    {
        await using var company = await Company.StartAsync();
        var old = new PasswordHasher<Account>();
        var account = new Account("olga", AccountRoles.Technician, null, "s1");
        company.Book.Add(account with { PasswordHash = old.HashPassword(account, Company.Password) });
        string before = company.Book.Find("olga")!.PasswordHash!;

        await company.BrowserOfAsync("olga");
        string after = company.Book.Find("olga")!.PasswordHash!;

        Assert.NotEqual(before, after);
        await company.BrowserOfAsync("olga");
        Assert.Equal(after, company.Book.Find("olga")!.PasswordHash);
    }

    [Fact]
    public async Task SignIn_ClosedAccount_IsNotLetIn()
    {
        await using var company = await Company.StartAsync();
        var ada = await company.BrowserOfAsync("ada");
        using var closed = await ada.PatchAsJsonAsync("/api/accounts/tom", new { open = false });

        using var answer = await Company.SignInAsync(company.Browser(), "tom", Company.Password);

        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
        Assert.Equal(AccountRoles.Technician, company.Book.Find("tom")!.Roles);
    }

    [Fact]
    public async Task SignIn_FromAPageOfAnotherSite_IsTurnedAway()
    {
        await using var company = await Company.StartAsync();
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/session")
        {
            Content = JsonContent.Create(new { name = "tom", password = Company.Password }),
            Headers = { { "Origin", "https://elsewhere.example" } },
        };

        using var answer = await company.Browser().SendAsync(request);

        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Fact]
    public async Task SignIn_HugeBody_IsRefusedUnread()
    {
        await using var company = await Company.StartAsync();

        using var answer = await Company.SignInAsync(company.Browser(), "tom", new string('x', 100_000));

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
    }

    private static Task<HttpResponseMessage> ChangeAsync(HttpClient browser, string password, string fresh) =>
        browser.PostAsJsonAsync("/api/session/password", new { name = "tom", password, fresh });

    private static async Task<HttpStatusCode> StatusWithAsync(Company company, string method, string path,
        string cookie)
    {
        using var client = new HttpClient(new HttpClientHandler { UseCookies = false })
        {
            BaseAddress = company.Server.Http.BaseAddress,
        };
        using var request = new HttpRequestMessage(new HttpMethod(method), path) { Headers = { { "Cookie", cookie } } };
        using var answer = await client.SendAsync(request);
        return answer.StatusCode;
    }
}
