using System.Collections.Immutable;
using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Bot.Tests.Server.Commands;
using DxAssistant.Cases.Accounts;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Server.Accounts;

namespace DxAssistant.Bot.Tests.Server.Accounts;

/// <summary>
/// People come in by their company's word and by nobody else's, and only into accounts that are the company's.
/// </summary>
public sealed class CompanySignInTests
{
    private static readonly ImmutableDictionary<string, AccountRoles> Groups =
        ImmutableDictionary.CreateRange(StringComparer.Ordinal,
            new Dictionary<string, AccountRoles>
            {
                ["hvac-vans"] = AccountRoles.Technician, ["hvac-desk"] = AccountRoles.Desk,
            });

    [Fact]
    public async Task SignIn_AtTheCompany_IsTheAccountOfThatName()
    {
        await using var issuer = await Issuer.StartAsync();
        await using var server = await RunningServer.StartAsync(Book(), Settings(issuer));
        using var browser = Browser(server);

        Assert.Equal("/sign-in?then=%2Fcases", await ComeAsync(browser));
        var session = await browser.GetFromJsonAsync<JsonElement>("/api/session");
        Assert.Equal("tom", session.GetProperty("name").GetString());
        Assert.Equal("technician", session.GetProperty("roles")[0].GetString());
        Assert.Equal(HttpStatusCode.OK, await Company.StatusAsync(browser, "/api/cases"));
        Assert.Equal(HttpStatusCode.Forbidden, await Company.StatusAsync(browser, "/api/accounts"));
    }

    [Theory]
    [InlineData(Twist.Signature)]
    [InlineData(Twist.NoSignature)]
    [InlineData(Twist.Nonce)]
    [InlineData(Twist.Audience)]
    [InlineData(Twist.Issuer)]
    [InlineData(Twist.Time)]
    [InlineData(Twist.Code)]
    public async Task SignIn_TokenThatIsNotForThisQuestion_IsNotLetIn(Twist twist)
    {
        await using var issuer = await Issuer.StartAsync();
        issuer.Twist = twist;
        await using var server = await RunningServer.StartAsync(Book(), Settings(issuer));
        using var browser = Browser(server);

        await AssertTurnedAwayAsync(browser);
    }

    [Theory]
    [InlineData("stranger")]
    [InlineData("closed")]
    [InlineData("ada")] // has a password here: the company's word is not enough
    public async Task SignIn_NoAccountOfTheCompany_IsNotLetIn(string person)
    {
        await using var issuer = await Issuer.StartAsync();
        issuer.Person = person;
        var book = Book();
        await using var server = await RunningServer.StartAsync(book, Settings(issuer));
        using var browser = Browser(server);

        await AssertTurnedAwayAsync(browser);
        Assert.Contains(book.Audit(5), line => line.Who == person && line.Did == "was not let in from the company");
    }

    // A name may be given to somebody else; what the company calls a person among its own is not.
    [Fact]
    public async Task SignIn_AnotherPersonUnderAnOldName_IsNotLetInUntilTheAccountWasClosed()
    {
        await using var issuer = await Issuer.StartAsync();
        var book = Book();
        await using var server = await RunningServer.StartAsync(book, Settings(issuer));
        using (var first = Browser(server)) await ComeAsync(first);
        issuer.Subject = "s-2";

        using var second = Browser(server);
        await AssertTurnedAwayAsync(second);
        var desk = new AccountDesk(book, new SignIn(book, TimeProvider.System), TimeProvider.System);
        Assert.Null(desk.SetOpen("ada", "tom", open: false));
        Assert.Null(desk.SetOpen("ada", "tom", open: true));
        Assert.Equal("/sign-in?then=%2Fcases", await ComeAsync(second));
    }

    [Fact]
    public async Task SignIn_WithGroups_MakesTheAccountAndFollowsThem()
    {
        await using var issuer = await Issuer.StartAsync();
        (issuer.Person, issuer.Groups) = ("nina", ["everybody", "hvac-vans"]);
        var book = Book();
        await using var server =
            await RunningServer.StartAsync(book, Settings(issuer) with { RolesClaim = "groups", Roles = Groups });
        using var browser = Browser(server);

        await ComeAsync(browser);
        Assert.Equal(AccountRoles.Technician, book.Find("nina")!.Roles);
        Assert.Equal(HttpStatusCode.Forbidden, await Company.StatusAsync(browser, "/api/work"));

        issuer.Groups = ["hvac-desk"];
        using var another = Browser(server);
        await ComeAsync(another);
        Assert.Equal(HttpStatusCode.OK, await Company.StatusAsync(another, "/api/work"));
        Assert.Equal(HttpStatusCode.Unauthorized, await Company.StatusAsync(browser, "/api/cases"));

        issuer.Groups = ["everybody"];
        using var none = Browser(server);
        await AssertTurnedAwayAsync(none);
    }

    // Without a password here there is none to be guessed.
    [Fact]
    public async Task SignIn_WithAPassword_OfAnAccountOfTheCompany_IsRefused()
    {
        await using var issuer = await Issuer.StartAsync();
        await using var server = await RunningServer.StartAsync(Book(), Settings(issuer));
        using var browser = Browser(server);

        using var answer = await Company.SignInAsync(browser, "tom", "");

        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
    }

    [Fact]
    public async Task SignIn_CompanyThatIsAwayOrSomebodyElse_SaysSo()
    {
        await using var issuer = await Issuer.StartAsync();
        issuer.CalledOtherwise = "https://elsewhere.example";
        await using var server = await RunningServer.StartAsync(Book(), Settings(issuer));
        using var browser = Browser(server);

        Assert.Equal("/sign-in?refused=away", await ComeAsync(browser));
    }

    [Fact]
    public async Task Serve_SignInThatCallsItselfOtherwise_IsRefusedWithTheRemedy()
    {
        await using var issuer = await Issuer.StartAsync();
        issuer.CalledOtherwise = "https://elsewhere.example";
        using var folder = new TemporaryFolder();
        string[] file = ["--accounts", folder.File("accounts.db")];
        await Run.OfAsync(Company.Password + "\n", ["accounts", "add", "ada", "--role", "administrator", .. file]);

        var run = await Run.OfAsync(
            "",
            ["--company", issuer.Address.ToString(), "--company-client", "dx", "--data", folder.File("cases.db"),
                "--content", Shipped.Folder, .. file]);

        Assert.Equal(2, run.Code);
        Assert.Contains("calls itself https://elsewhere.example: give that as --company", run.Error,
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task Accounts_ForTheCompany_NeedNoPasswordButNotAsTheFirst()
    {
        using var folder = new TemporaryFolder();
        string[] file = ["--accounts", folder.File("accounts.db")];

        var first = await Run.OfAsync("", ["accounts", "add", "ada", "--role", "administrator", "--company", .. file]);
        await Run.OfAsync(Company.Password + "\n", ["accounts", "add", "ada", "--role", "administrator", .. file]);
        var second = await Run.OfAsync("", ["accounts", "add", "tom", "--role", "technician", "--company", .. file]);

        Assert.Equal((2, 0), (first.Code, second.Code));
        Assert.Contains("The first account has a password", first.Error, StringComparison.Ordinal);
    }

    private static AccountBook Book()
    {
        var book = SqliteAccounts.InMemory(TimeProvider.System);
        book.Add(SignIn.Make("ada", AccountRoles.Administrator, Company.Password));
        book.Add(SignIn.Make("tom", AccountRoles.Technician, null));
        book.Add(SignIn.Make("closed", AccountRoles.Technician, null) with { IsOpen = false });
        return book;
    }

    private static CompanySettings Settings(Issuer issuer) => new(issuer.Address, Issuer.Client, Issuer.Secret);

    private static HttpClient Browser(RunningServer server) =>
        new(new HttpClientHandler { CookieContainer = new CookieContainer() })
        {
            BaseAddress = server.Http.BaseAddress,
        };

    /// <summary>Goes to the company and back; where that ends.</summary>
    private static async Task<string> ComeAsync(HttpClient browser)
    {
        using var page = await browser.GetAsync("/sign-in/company?then=/cases");
        return page.RequestMessage!.RequestUri!.PathAndQuery;
    }

    private static async Task AssertTurnedAwayAsync(HttpClient browser)
    {
        Assert.Equal("/sign-in?refused=company", await ComeAsync(browser));
        Assert.Equal(HttpStatusCode.Unauthorized, await Company.StatusAsync(browser, "/api/cases"));
    }
}
