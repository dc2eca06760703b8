using DxAssistant.Cases.Accounts;

namespace DxAssistant.Bot.Tests.Cases.Accounts;

/// <summary>What every book of accounts must do; a store's own test class only says how to make one.</summary>
public abstract class AccountBookTests
{
    protected static readonly DateTimeOffset Noon = new(2030, 5, 6, 12, 0, 0, TimeSpan.Zero);

    protected TimeProvider Clock { get; } = new SetClock(Noon);

    protected abstract AccountBook Make();

    [StoreFact]
    public void Account_AddedChangedAndFound()
    {
        var book = Make();
        Assert.False(book.HasAccounts);
        var tom = new Account("tom", AccountRoles.Technician, null, "s1");
        Assert.True(book.Add(tom));
        Assert.False(book.Add(tom));

        Assert.True(book.Replace(tom with { Roles = AccountRoles.Desk, PasswordHash = "h", Stamp = "s2" }, "s1"));
        Assert.False(book.Replace(tom, "s1"));
        Assert.Equal(tom with { Roles = AccountRoles.Desk, PasswordHash = "h", Stamp = "s2" }, book.Find("tom"));
        Assert.Equal(["tom"], book.Accounts().Select(account => account.Name));
        Assert.Null(book.Find("tilda"));
    }

    [StoreFact]
    public void CountFailure_FifthInARow_LocksUntilCleared()
    {
        var book = Make();
        book.Add(new Account("tom", AccountRoles.Technician, "h", "s1"));
        for (int tried = 0; tried < 4; tried++) book.CountFailure("tom", 5, Noon.AddMinutes(5));
        Assert.Null(book.Find("tom")!.LockedUntil);

        book.CountFailure("tom", 5, Noon.AddMinutes(5));
        Assert.Equal(Noon.AddMinutes(5), book.Find("tom")!.LockedUntil);
        book.ClearFailures("tom");
        Assert.Null(book.Find("tom")!.LockedUntil);
    }

    [StoreFact]
    public void Token_IsGoodUntilRevoked()
    {
        var book = Make();
        var token = new ApiToken("t1", "the dispatcher", TokenScopes.ReadCases, "ada", Noon, null);
        book.AddToken(token, "hash");

        Assert.Equal(token, book.FindToken("hash"));
        Assert.True(book.Revoke("t1"));
        Assert.False(book.Revoke("t1"));
        Assert.Null(book.FindToken("hash"));
        Assert.Equal(token with { RevokedAt = Noon }, Assert.Single(book.Tokens()));
    }

    [StoreFact]
    public void Key_IsKeptAsItWasFirstWritten()
    {
        var book = Make();
        Assert.Empty(book.Keys.All());
        book.Keys.Keep("b", "<key id='2'/>");
        book.Keys.Keep("a", "<key id='1'/>");
        book.Keys.Keep("b", "<key id='3'/>");

        Assert.Equal(["<key id='1'/>", "<key id='2'/>"], book.Keys.All().ToArray());
    }

    [StoreFact]
    public void Grant_LetsInUntilTakenBack()
    {
        var book = Make();
        book.Grant("a", "tom");
        book.Grant("a", "tom");

        Assert.True(book.MaySee("a", "tom"));
        Assert.Equal(["a"], book.CasesOf("tom"));
        Assert.True(book.TakeBack("a", "tom"));
        Assert.False(book.TakeBack("a", "tom"));
        Assert.False(book.MaySee("a", "tom"));
    }

    [StoreFact]
    public void Audit_NewestFirst_PageByPage()
    {
        var book = Make();
        foreach (string did in new[] { "signed in", "saw case", "signed out" }) book.Note("tom", did, "a");

        var page = book.Audit(2);
        Assert.Equal(["signed out", "saw case"], page.Select(line => line.Did));
        Assert.Equal(("tom", "a", Noon), (page[0].Who, page[0].To, page[0].At));
        Assert.Equal("signed in", Assert.Single(book.Audit(2, page[^1].Number)).Did);
    }

    [StoreFact]
    public void Session_GoesOnUntilEnded_OfItsAccountAlone()
    {
        var book = Make();
        book.Sessions.Begin("s1", "tom");
        book.Sessions.Begin("s2", "tom");

        Assert.True(book.Sessions.GoesOn("s1", "tom"));
        Assert.False(book.Sessions.GoesOn("s1", "tilda"));
        book.Sessions.End("s1");
        Assert.False(book.Sessions.GoesOn("s1", "tom"));
        Assert.True(book.Sessions.GoesOn("s2", "tom"));
    }

    [StoreFact]
    public void Session_UsedOrNot_IsOverAfterAWeek()
    {
        var book = Make();
        book.Sessions.Begin("s1", "tom");

        ((SetClock)Clock).Time = Noon + SessionBook.Longest;
        Assert.True(book.Sessions.GoesOn("s1", "tom"));
        ((SetClock)Clock).Time += TimeSpan.FromSeconds(1);
        Assert.False(book.Sessions.GoesOn("s1", "tom"));
    }

    [StoreFact]
    public void Company_PersonAndAccountHaveOneAnother()
    {
        var book = Make();
        Assert.True(book.Company.Bind("s1", "tom"));
        Assert.False(book.Company.Bind("s1", "tilda"));
        Assert.False(book.Company.Bind("s2", "tom"));

        Assert.Equal("tom", book.Company.AccountOf("s1"));
        Assert.Null(book.Company.AccountOf("s2"));
        book.Company.Forget("tom");
        Assert.Null(book.Company.AccountOf("s1"));
    }
}
