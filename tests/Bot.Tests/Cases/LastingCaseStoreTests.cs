using DxAssistant.Cases;
using DxAssistant.Cases.Export;

namespace DxAssistant.Bot.Tests.Cases;

/// <summary>What a store must do, besides, whose rows somebody else can reach.</summary>
public abstract class LastingCaseStoreTests : CaseStoreTests
{
    /// <summary>Changes the rows behind the program's back.</summary>
    protected abstract Task AlterAsync(string sql);

    [StoreTheory]
    [InlineData("UPDATE event SET body = replace(body, 'b5', 'b9') WHERE sequence = 2")]
    [InlineData("UPDATE event SET at = at + 1 WHERE sequence = 2")]
    [InlineData("UPDATE event SET turn_id = 'other' WHERE sequence = 2")]
    [InlineData("UPDATE event SET hash = 'x' WHERE sequence = 2")]
    [InlineData("UPDATE event SET case_id = 'b' WHERE sequence = 1")]
    [InlineData("DELETE FROM event WHERE sequence = 2")]
    [InlineData("DELETE FROM event WHERE sequence = 3")]
    [InlineData("UPDATE event SET sequence = sequence + 10")]
    [InlineData("UPDATE event SET aside = replace(aside, 'fan dead', 'fan good') WHERE sequence = 3")]
    public async Task ReadAsync_RowAlteredBehindTheProgram_IsRefused(string change)
    {
        await Store.AppendAsync("a", 0, "t1", Events("b4", "b5"));
        await Store.AppendAsync("a", 2, "t2", [Words("fan dead")]);

        await AlterAsync(change);
        var error = await Assert.ThrowsAsync<CaseFileException>(() => Store.ReadAsync("a"));

        Assert.Contains("of case a was altered", error.Message, StringComparison.Ordinal);
    }

    // What is left is a sound log by itself: what was taken away is known from beside it.
    [StoreTheory]
    [InlineData("DELETE FROM event WHERE sequence = 3")]
    [InlineData("DELETE FROM event WHERE sequence > 1")]
    [InlineData("DELETE FROM event")]
    [InlineData("DELETE FROM event; DELETE FROM turn")]
    public async Task IsSoundAsync_EndOfTheLogTakenAway_IsNamedAndNotSound(string change)
    {
        await Store.AppendAsync("a", 0, "t1", Events("b4", "b5"));
        await Store.AppendAsync("a", 2, "t2", [Words("fan dead")]);
        Assert.True(await CaseExchange.IsSoundAsync(Store, "a"));

        await AlterAsync(change);

        Assert.Equal(["a"], (await Store.NamesAsync()).ToArray());
        Assert.False(await IsSoundAsync());
    }

    private async Task<bool> IsSoundAsync()
    {
        try
        {
            return await CaseExchange.IsSoundAsync(Store, "a");
        }
        catch (CaseFileException)
        {
            return false;
        }
    }
}
