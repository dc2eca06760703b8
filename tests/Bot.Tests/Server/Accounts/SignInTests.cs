using System.Net;
using System.Net.Http.Json;
using DxAssistant.Cases.Accounts;

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
        Assert.Contains("The name or the password is not right", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.False(answer.Headers.Contains("Set-Cookie"));
    }

    [Fact]
    public async Task SignIn_ManyWrongAtOnce_LocksTheAccountEvenForTheRightPassword()
    {
        await using var company = await Company.StartAsync();
        var browser = company.Browser();

        var wrong = await Task.WhenAll(Enumerable.Range(0, 5).Select(_ => Company.SignInAsync(browser, "tom", "guess")));
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
}
