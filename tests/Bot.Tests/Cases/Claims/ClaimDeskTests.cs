using DxAssistant.Bot.Tests.Conversation;
using DxAssistant.Cases;
using DxAssistant.Cases.Claims;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Bot.Tests.Cases.Claims;

/// <summary>A claim from its case to its decision.</summary>
public sealed class ClaimDeskTests
{
    [Fact]
    public async Task Begin_ProvenSensor_SheetHasPartReadingsExpectationAndVerdict()
    {
        await using var made = await ClaimedCase.WalkedAsync();

        var sheet = (await made.BegunAsync()).Sheet!;

        Assert.Equal("sensor-room-air", sheet.Fault);
        Assert.Equal("room air sensor", sheet.Part);
        Assert.True(sheet.Works);
        Assert.InRange(sheet.Belief, sheet.Needed, 1);
        var proof = Assert.Single(sheet.Evidence, shown => shown.Check == "room-sensor-resistance");
        Assert.True(proof.Demanded);
        Assert.NotNull(proof.Verdict);
        Assert.NotEmpty(proof.Readings);
        Assert.NotEmpty(proof.Expected);
        Assert.Empty(sheet.Missing);
        Assert.Null(sheet.LeftPossible);
    }

    [Fact]
    public async Task Begin_CaseThatEndedWithoutProof_SaysSoAndNamesWhatIsLeft()
    {
        await using var made = await ClaimedCase.UnprovenAsync();

        var claim = await made.BegunAsync();

        var left = Assert.NotNull(claim.Sheet!.LeftPossible);
        Assert.Equal(claim.Sheet.Fault, left[0].Fault);
        Assert.True(left.Length > 1);
        Assert.All(left,
            fault => Assert.InRange(fault.Belief, ShippedContent.Library.Settings.Suspected,
                ShippedContent.Library.Settings.Found));
        Assert.Contains(ClaimRules.Wanting(claim.Sheet),
            wanting => wanting.StartsWith("no fault was proven", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Begin_Twice_IsOneClaim()
    {
        await using var made = await ClaimedCase.WalkedAsync();
        Assert.Equal((await made.BegunAsync()).Id, (await made.BegunAsync()).Id);
    }

    [Fact]
    public async Task Begin_Again_TakesTheUnitThatTheJobSaysMeanwhile()
    {
        await using var made = await ClaimedCase.WalkedAsync();
        await made.BegunAsync();
        var noted = new UnitNoted("tom", 1, "brenholt-ws", "WS-35", "BW24071532", new DateOnly(2029, 6, 1), null);
        await made.Cases.AppendAsync(ClaimedCase.Id, await made.Cases.LastAsync(ClaimedCase.Id), "unit", [noted]);

        var again = await made.BegunAsync();
        var third = await made.BegunAsync();

        Assert.Equal("BW24071532", again.Unit.Serial);
        Assert.Equal(again.Log.Select(entry => entry.Hash), third.Log.Select(entry => entry.Hash));
    }

    [Fact]
    public async Task Act_WholeCourse_EndsApprovedWithWhoAndWhen()
    {
        await using var made = await ClaimedCase.WalkedAsync();
        var ready = await made.ReadyAsync();
        Assert.Equal(ClaimState.Ready, ready.State);
        await made.Desk.ActAsync(ready.Id, new ClaimAct.Submit(), ClaimedCase.Plain, 3);
        var approved =
            ClaimedCase.Saved(await made.Desk.ActAsync(ready.Id, new ClaimAct.Approve(null), ClaimedCase.Entitled, 4));

        Assert.Equal(ClaimState.Approved, approved.State);
        Assert.Equal(["Desk Anna", "Desk Anna", "Technician Bo", "Technician Bo", "Desk Anna"],
            approved.Log.Select(entry => entry.By));
        Assert.Equal(made.Clock.Time, approved.Log[^1].At);
        Assert.Equal("covered", approved.Sheet!.Coverage.Part);
    }

    [Fact]
    public async Task MakeReady_NoSerial_NamesIt()
    {
        await using var made = await ClaimedCase.WalkedAsync();
        var claim = await made.BegunAsync();

        var refused = Assert.IsType<ClaimDone.Refused>(
            await made.Desk.ActAsync(claim.Id, new ClaimAct.MakeReady(null), ClaimedCase.Entitled, 1));

        Assert.Contains("serial number", Assert.Single(refused.Missing), StringComparison.Ordinal);
    }

    [Fact]
    public async Task MakeReady_DemandedCheckLeftOut_OnlyAnEntitledReasonHelps()
    {
        await using var made = await ClaimedCase.WalkedAsync(left: "room-sensor-resistance");
        var claim = await made.BegunAsync();
        claim = ClaimedCase.Saved(
            await made.Desk.ActAsync(claim.Id, new ClaimAct.TellUnit(ClaimedCase.Unit), ClaimedCase.Entitled, 1));
        if (claim.Sheet!.Fault != "sensor-room-air") Assert.Fail($"the walk proved {claim.Sheet.Fault}");

        var plainly = Assert.IsType<ClaimDone.Refused>(
            await made.Desk.ActAsync(claim.Id, new ClaimAct.MakeReady(null), ClaimedCase.Entitled, 2));
        var unentitled = Assert.IsType<ClaimDone.Refused>(
            await made.Desk.ActAsync(claim.Id, new ClaimAct.MakeReady("customer waits"), ClaimedCase.Plain, 2));
        var entitled = ClaimedCase.Saved(await made.Desk.ActAsync(claim.Id,
            new ClaimAct.MakeReady("meter broke, part is here"), ClaimedCase.Entitled, 2));

        Assert.Contains(plainly.Missing, line => line.Contains('“')
            && line.Contains("demands", StringComparison.Ordinal));
        Assert.Contains("may not", unentitled.Missing[0], StringComparison.Ordinal);
        Assert.Equal("meter broke, part is here", entitled.Override);
    }

    [Fact]
    public async Task Return_WithoutReason_IsRefused_WithReasonGoesBackToWork()
    {
        await using var made = await ClaimedCase.WalkedAsync();
        var claim = await made.ReadyAsync();
        await made.Desk.ActAsync(claim.Id, new ClaimAct.Submit(), ClaimedCase.Plain, 3);

        Assert.IsType<ClaimDone.Refused>(
            await made.Desk.ActAsync(claim.Id, new ClaimAct.Return(" "), ClaimedCase.Entitled, 4));
        Assert.IsType<ClaimDone.Refused>(
            await made.Desk.ActAsync(claim.Id, new ClaimAct.Return("photo"), ClaimedCase.Plain, 4));
        var back = ClaimedCase.Saved(
            await made.Desk.ActAsync(claim.Id, new ClaimAct.Return("photo of the nameplate"), ClaimedCase.Entitled, 4));
        var again =
            ClaimedCase.Saved(await made.Desk.ActAsync(claim.Id, new ClaimAct.MakeReady(null), ClaimedCase.Plain, 5));

        Assert.Equal(ClaimState.Returned, back.State);
        Assert.Equal(ClaimState.Ready, again.State);
    }

    [Theory]
    [InlineData("approve")]
    [InlineData("submit")]
    public async Task Act_NotItsTime_IsRefused(string act)
    {
        await using var made = await ClaimedCase.WalkedAsync();
        var claim = await made.BegunAsync();
        ClaimAct wish = act == "submit" ? new ClaimAct.Submit() : new ClaimAct.Approve(null);

        Assert.Contains("draft",
            Assert.IsType<ClaimDone.Refused>(await made.Desk.ActAsync(claim.Id, wish, ClaimedCase.Entitled,
                1)).Missing[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Act_SomebodyWasFaster_IsOvertaken()
    {
        await using var made = await ClaimedCase.WalkedAsync();
        var claim = await made.ReadyAsync();

        Assert.IsType<ClaimDone.Overtaken>(
            await made.Desk.ActAsync(claim.Id, new ClaimAct.Submit(), ClaimedCase.Plain, 2));
        Assert.Equal(ClaimState.Ready, (await made.Desk.ShowAsync(claim.Id))!.State);
    }

    [Fact]
    public async Task TellUnit_AfterReady_TakesTheSheetBack()
    {
        await using var made = await ClaimedCase.WalkedAsync();
        var claim = await made.ReadyAsync();

        var changed = ClaimedCase.Saved(await made.Desk.ActAsync(
            claim.Id, new ClaimAct.TellUnit(ClaimedCase.Unit with { Serial = "other" }), ClaimedCase.Plain, 3));

        Assert.Equal(ClaimState.Draft, changed.State);
        Assert.Null(changed.Line);
    }

    [Fact]
    public async Task File_ClosedAndOpened_KeepsClaimAndNews()
    {
        using var folder = new TemporaryFolder();
        string file = folder.File("cases.db"), id;
        await using (var made = await ClaimedCase.WalkedAsync(claims: SqlClaimStore.Open(file))) id =
            (await made.ReadyAsync()).Id;

        await using var again = SqlClaimStore.Open(file);
        Assert.Equal(3, (await again.ReadAsync(id)).Length);
        Assert.Equal(ClaimState.Ready, Assert.Single(await again.ListAsync()).State);
        Assert.Equal([1L, 3L], (await again.DueAsync(DateTimeOffset.MaxValue, 10)).Select(news => news.Sequence));
    }
}
