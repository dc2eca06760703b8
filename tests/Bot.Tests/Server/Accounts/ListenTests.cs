using System.Net;
using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Bot.Tests.Server.Commands;
using DxAssistant.Server.Serving;

namespace DxAssistant.Bot.Tests.Server.Accounts;

/// <summary>The server opens itself to others only when people sign in and nobody can read along.</summary>
public sealed class ListenTests
{
    private static readonly ServerSettings Everywhere = new(IPAddress.Any, 0, []);
    private static readonly ServerSettings Here = new(IPAddress.Loopback, 0, []);

    [Fact]
    public void Reachable_WithoutAccounts_IsRefused()
    {
        Assert.Contains("no accounts", Everywhere.RefuseWithout(false), StringComparison.Ordinal);
        Assert.Contains("no accounts", (Here with { BehindProxy = true }).RefuseWithout(false),
            StringComparison.Ordinal);
        Assert.Contains("no accounts", (Here with { Hosts = ["dx.example"] }).RefuseWithout(false),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Reachable_WithAccountsInClearText_IsRefused() =>
        Assert.Contains("--certificate", Everywhere.RefuseWithout(true), StringComparison.Ordinal);

    [Fact]
    public void Reachable_WithAccountsAndProtected_MayListen()
    {
        Assert.Null((Everywhere with { Certificate = "x.pfx" }).RefuseWithout(true));
        Assert.Null((Everywhere with { BehindProxy = true }).RefuseWithout(true));
        Assert.Null(Here.RefuseWithout(false));
    }

    [Fact]
    public async Task Command_NoAccounts_NamesTheRemedy()
    {
        using var folder = new TemporaryFolder();

        var run = await Run.OfAsync(
            "", "--listen", "0.0.0.0", "--data", folder.File("cases.db"), "--content", Shipped.Folder);

        Assert.Equal(2, run.Code);
        Assert.Contains("accounts add NAME --role administrator", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Command_Accounts_AddsListsAndRefuses()
    {
        using var folder = new TemporaryFolder();
        string[] file = ["--accounts", folder.File("accounts.db")];

        var added =
            await Run.OfAsync(Company.Password + "\n", ["accounts", "add", "ada", "--role", "administrator", .. file]);
        var weak = await Run.OfAsync("short\n", ["accounts", "add", "bo", "--role", "desk", .. file]);
        var list = await Run.OfAsync("", ["accounts", "list", .. file]);

        Assert.Equal(0, added.Code);
        Assert.Equal(2, weak.Code);
        Assert.Equal("ada  administrator  open\n", list.Output);
    }
}
