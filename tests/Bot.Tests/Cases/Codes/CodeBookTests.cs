using DxAssistant.Cases.Codes;

namespace DxAssistant.Bot.Tests.Cases.Codes;

/// <summary>What every book of codes must do; a store's own test class only says how to make one.</summary>
public abstract class CodeBookTests
{
    private static readonly DateTimeOffset Noon = new(2030, 5, 6, 12, 0, 0, TimeSpan.Zero);

    /// <summary>Two servers on one place.</summary>
    protected abstract (CodeBook One, CodeBook Other) Make();

    [StoreFact]
    public async Task Take_AtAnotherServer_LetsInOnce()
    {
        var (one, other) = Make();
        await using var first = one;
        await using var second = other;
        Assert.True(await one.SetAsync("a", "amber canoe", Noon.AddMinutes(10)));

        var taken = await Task.WhenAll(Enumerable.Range(0, 20)
            .Select(i => (i % 2 == 0 ? one : other).TakeAsync("amber canoe", Noon)));

        Assert.Equal("a", Assert.Single(taken, found => found is not null));
    }

    [StoreFact]
    public async Task Set_OneCodeACase_OneCaseACode()
    {
        var (one, other) = Make();
        await using var first = one;
        await using var second = other;
        await one.SetAsync("a", "amber canoe", Noon.AddMinutes(10));

        Assert.False(await other.SetAsync("b", "amber canoe", Noon.AddMinutes(10)));
        Assert.True(await one.SetAsync("a", "lilac drum", Noon.AddMinutes(10)));
        Assert.Null(await other.TakeAsync("amber canoe", Noon));
        Assert.Null(await other.TakeAsync("lilac drum", Noon.AddMinutes(10)));
        await other.DropAsync("a");
        Assert.Null(await one.TakeAsync("lilac drum", Noon));
    }

    [StoreFact]
    public async Task Failures_AreSeenByTheOther_AndForgottenInTime()
    {
        var (one, other) = Make();
        await using var first = one;
        await using var second = other;
        await one.FailAsync("tilda", Noon);
        await other.FailAsync("tilda", Noon.AddMinutes(5));

        Assert.Equal("tilda tilda", string.Join(' ', await other.FailuresAsync(Noon.AddMinutes(-1))));
        await one.TidyAsync(Noon, Noon);
        Assert.Single(await other.FailuresAsync(Noon.AddMinutes(-1)));
    }
}
