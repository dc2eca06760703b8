using DxAssistant.Cases.Accounts;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Server.Accounts;

namespace DxAssistant.Bot.Tests.Server.Accounts;

/// <summary>Changes of accounts that must not be possible.</summary>
public sealed class AccountDeskTests
{
    private readonly AccountBook book = SqliteAccounts.InMemory(TimeProvider.System);
    private readonly AccountDesk desk;

    public AccountDeskTests() =>
        desk = new AccountDesk(book, new SignIn(book, TimeProvider.System), TimeProvider.System);

    [Fact]
    public void Add_FirstWhoIsNoAdministrator_IsRefused() =>
        Assert.Contains("administrator", desk.Add("x", "tom", ["technician"], Company.Password),
            StringComparison.Ordinal);

    [Theory]
    [InlineData("two words", "administrator", Company.Password, "is not a name")]
    [InlineData("ada", "boss", Company.Password, "boss is not a role")]
    [InlineData("ada", "administrator", "short", "at least 15 characters")]
    public void Add_BadInput_SaysWhatIsWrong(string name, string role, string password, string says)
    {
        Assert.Contains(says, desk.Add("x", name, [role], password), StringComparison.Ordinal);
        Assert.False(book.HasAccounts);
    }

    [Fact]
    public void Add_SameNameInCapitals_IsTaken()
    {
        Assert.Null(desk.Add("x", "ada", ["administrator"], Company.Password));
        Assert.Contains("already", desk.Add("x", "ADA", ["desk"], Company.Password), StringComparison.Ordinal);
    }

    [Fact]
    public void LastAdministrator_CanNeitherBeClosedNorDemoted()
    {
        desk.Add("x", "ada", ["administrator"], Company.Password);

        Assert.Contains("last administrator", desk.SetOpen("x", "ada", open: false), StringComparison.Ordinal);
        Assert.Contains("last administrator", desk.SetRoles("x", "ada", ["desk"]), StringComparison.Ordinal);
    }

    [Fact]
    public void Changes_AreWrittenDown_WithWhoAndToWhom()
    {
        desk.Add("x", "ada", ["administrator"], Company.Password);
        desk.SetPassword("ada", "ada", "another long password");

        Assert.Collection(
            book.Audit(10).Reverse(),
            line => Assert.Equal(("x", "added account", "ada"), (line.Who, line.Did, line.To)),
            line => Assert.Equal(("ada", "changed password", "ada"), (line.Who, line.Did, line.To)));
    }

    [Fact]
    public void Password_Kept_IsNotThePassword()
    {
        desk.Add("x", "ada", ["administrator"], Company.Password);

        Assert.DoesNotContain(Company.Password, book.Find("ada")!.PasswordHash, StringComparison.Ordinal);
    }
}
