using DxAssistant.Cases.Claims;

namespace DxAssistant.Bot.Tests.Cases.Claims;

/// <summary>What every store of claims must do; a store's own test class only says how to make one.</summary>
public abstract class ClaimStoreTests
{
    protected abstract IClaimStore Make();

    [StoreFact]
    public async Task Ready_IsKeptWithItsLogHeadAndNews()
    {
        await using var made = await ClaimedCase.WalkedAsync(claims: Make());
        string id = (await made.ReadyAsync()).Id;

        Assert.Equal(3, (await made.Claims.ReadAsync(id)).Length);
        Assert.Equal(ClaimState.Ready, Assert.Single(await made.Claims.ListAsync(ofCase: ClaimedCase.Id)).State);
        Assert.Empty(await made.Claims.ListAsync(ClaimState.Approved));
        var news = await made.Claims.DueAsync(DateTimeOffset.MaxValue, 10);
        Assert.Equal([1L, 3L], news.Select(one => one.Sequence));

        await made.Claims.ToldAsync(news[0]);
        await made.Claims.PutOffAsync(news[1], made.Clock.Time.AddHours(1));
        Assert.Empty(await made.Claims.DueAsync(made.Clock.Time, 10));
        Assert.Equal(1, Assert.Single(await made.Claims.DueAsync(made.Clock.Time.AddHours(1), 10)).Tries);
    }

    [StoreFact]
    public async Task List_AfterAPlace_GoesOnBehindIt()
    {
        await using var made = await ClaimedCase.WalkedAsync(claims: Make());
        await made.BegunAsync();
        var only = Assert.Single(await made.Claims.ListAsync());

        Assert.Empty(await made.Claims.ListAsync(after: new ClaimPlace(only.At, only.Id)));
        Assert.Single(await made.Claims.ListAsync(after: new ClaimPlace(only.At, "")));
        Assert.Single(await made.Claims.ListAsync(after: new ClaimPlace(only.At.AddMilliseconds(1), only.Id)));
    }

    [StoreFact]
    public async Task Append_TwoEntriesOfOneNumber_OnlyTheFirstIsTaken()
    {
        await using var made = await ClaimedCase.WalkedAsync(claims: Make());
        string id = (await made.BegunAsync()).Id;
        var claim = Claim.Of(id, await made.Claims.ReadAsync(id));

        Assert.False(await made.Claims.AppendAsync(claim, "{}"));
        Assert.Single(await made.Claims.DueAsync(DateTimeOffset.MaxValue, 10));
    }
}
