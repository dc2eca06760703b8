using DxAssistant.Cases.Requests;

namespace DxAssistant.Bot.Tests.Cases.Requests;

/// <summary>What every book of requests must do; a store's own test class only says how to make one.</summary>
public abstract class RequestBookTests
{
    private static readonly DateTimeOffset Noon = new(2030, 5, 6, 12, 0, 0, TimeSpan.Zero);

    protected abstract RequestBook Make();

    [StoreFact]
    public async Task Take_SameKeyAgain_FindsWhatTheFirstMade()
    {
        await using var book = Make();

        Assert.Equal(new KeyedRequest("a", true, true), await book.TakeAsync("tom", "k", "open", "a", Noon));
        Assert.Equal(new KeyedRequest("a", false, true), await book.TakeAsync("tom", "k", "open", "b", Noon));
        Assert.Equal(new KeyedRequest("a", false, false),
            await book.TakeAsync("tom", "k", "something else", "c", Noon));
        Assert.Equal(new KeyedRequest("d", true, true), await book.TakeAsync("tilda", "k", "open", "d", Noon));
    }

    [StoreFact]
    public async Task Take_ManyAtOnce_OneIsFirst()
    {
        await using var book = Make();

        var taken = await Task.WhenAll(Enumerable.Range(0, 20)
            .Select(i => book.TakeAsync("tom", "k", "open", $"made {i}", Noon)));

        string made = Assert.Single(taken, one => one.IsFirst).Made;
        Assert.All(taken, one => Assert.Equal(made, one.Made));
    }

    [StoreFact]
    public async Task Forget_OldKeys_AreFreeAgain()
    {
        await using var book = Make();
        await book.TakeAsync("tom", "old", "open", "a", Noon);
        await book.TakeAsync("tom", "new", "open", "b", Noon.AddHours(1));

        await book.ForgetAsync(Noon.AddHours(1));

        Assert.True((await book.TakeAsync("tom", "old", "open", "c", Noon.AddHours(2))).IsFirst);
        Assert.False((await book.TakeAsync("tom", "new", "open", "d", Noon.AddHours(2))).IsFirst);
    }
}
