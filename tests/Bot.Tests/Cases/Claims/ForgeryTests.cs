using System.Collections.Immutable;
using DxAssistant.Bot.Tests.Conversation;
using DxAssistant.Cases;
using DxAssistant.Cases.Claims;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Conversation.Events;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Bot.Tests.Cases.Claims;

/// <summary>Sheets and logs that somebody changed are found out.</summary>
public sealed class ForgeryTests
{
    [Fact]
    public async Task Verify_SheetAsMade_IsGenuine()
    {
        await using var made = await ClaimedCase.WalkedAsync();
        var claim = await made.ReadyAsync();

        Assert.Empty(await made.Desk.VerifyAsync(VerifyLine.Find(claim.Line!)!, claim.Sheet));
    }

    [Fact]
    public async Task Verify_LineTypedFromPaper_IsGenuine()
    {
        await using var made = await ClaimedCase.WalkedAsync();
        string typed = (await made.ReadyAsync()).Line!.Replace("log ", "LOG  ", StringComparison.Ordinal);
        int log = typed.IndexOf("LOG", StringComparison.Ordinal);

        Assert.Empty(await made.Desk.VerifyAsync(
            VerifyLine.Find(typed[..log] + typed[log..].Replace("-", "", StringComparison.Ordinal)
                .ToUpperInvariant())!));
    }

    [Fact]
    public async Task Verify_ReadingChangedOnTheSheet_IsFoundOut()
    {
        await using var made = await ClaimedCase.WalkedAsync();
        var claim = await made.ReadyAsync();
        var forged =
            claim.Sheet! with { Evidence = [.. claim.Sheet!.Evidence.Select(shown => shown with { Answer = "open" })] };

        Assert.Contains("does not fit",
            Assert.Single(await made.Desk.VerifyAsync(VerifyLine.Find(claim.Line!)!, forged)),
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task Verify_FileChangedBesideItsSheet_IsFoundOut()
    {
        await using var made = await ClaimedCase.WalkedAsync();
        var claim = await made.ReadyAsync();
        var line = VerifyLine.Find(claim.Line!)!;
        Assert.Empty(await made.Desk.VerifyAsync(line, claim));

        foreach (var forged in new[]
        {
            claim with { Unit = claim.Unit with { Serial = "BW12-999999" } }, claim
                with { State = ClaimState.Approved },
            claim with { Override = "allowed" }, claim with { Log = claim.Log[..1] },
            claim with { Log = [.. claim.Log.Select(entry => entry with { By = "Somebody" })] },
        })
            Assert.Contains("was changed", Assert.Single(await made.Desk.VerifyAsync(line, forged)),
                StringComparison.Ordinal);
    }

    [Fact]
    public async Task Verify_OtherSheetWithALineOfItsOwn_IsFoundOut()
    {
        await using var made = await ClaimedCase.WalkedAsync();
        var claim = await made.ReadyAsync();
        var forged = claim.Sheet! with { Unit = ClaimedCase.Unit with { Serial = "BW12-999999" } };

        Assert.Contains("not from here",
            Assert.Single(await made.Desk.VerifyAsync(VerifyLine.Of(claim.Id, forged), forged)),
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("UPDATE claim_entry SET by_whom = 'Somebody' WHERE sequence = 3")]
    [InlineData("UPDATE claim_entry SET body = replace(body, '004711', '004712') WHERE sequence = 3")]
    [InlineData("DELETE FROM claim_entry WHERE sequence = 2")]
    [InlineData("UPDATE claim_entry SET at = at - 86400000 WHERE sequence = 1")]
    public async Task Verify_ClaimAlteredInTheFile_IsFoundOut(string alteration)
    {
        using var folder = new TemporaryFolder();
        string file = folder.File("cases.db");
        await using var made = await ClaimedCase.WalkedAsync(claims: SqlClaimStore.Open(file));
        var claim = await made.ReadyAsync();
        await RunAsync(file, alteration);

        Assert.Contains("was altered", Assert.Single(await made.Desk.VerifyAsync(VerifyLine.Find(claim.Line!)!)),
            StringComparison.Ordinal);
        await Assert.ThrowsAsync<CaseFileException>(() => made.Desk.ShowAsync(claim.Id));
    }

    [Theory]
    [InlineData("UPDATE event SET at = at - 1 WHERE sequence = 3")]
    [InlineData("UPDATE event SET body = replace(body, 'off-curve', 'open') WHERE body LIKE '%outcome-seen%off-curve%'")]
    public async Task Verify_CaseAlteredInTheFile_IsFoundOut(string alteration)
    {
        using var folder = new TemporaryFolder();
        string file = folder.File("cases.db");
        await using var made = await ClaimedCase.WalkedAsync(cases: SqliteCaseStore.Open(file, TimeProvider.System));
        var claim = await made.ReadyAsync();
        await RunAsync(file, alteration);

        Assert.Contains("was altered", Assert.Single(await made.Desk.VerifyAsync(VerifyLine.Find(claim.Line!)!)),
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task Verify_WordsBlankedSince_IsStillGenuine()
    {
        await using var made = await ClaimedCase.WalkedAsync();
        var claim = await made.ReadyAsync();
        Assert.NotEqual(0, await made.Cases.BlankAsync(ClaimedCase.Id));

        Assert.Empty(await made.Desk.VerifyAsync(VerifyLine.Find(claim.Line!)!, claim.Sheet));
    }

    [Fact]
    public async Task Verify_CaseLogAltered_IsFoundOut()
    {
        await using var made = await ClaimedCase.WalkedAsync();
        var claim = await made.ReadyAsync();
        var line = VerifyLine.Find(claim.Line!)!;
        var log = await made.Cases.ReadAsync(ClaimedCase.Id);
        var verifier = new SheetVerifier(new SheetBuilder(ShippedContent.Library));
        var claimLog = await made.Claims.ReadAsync(claim.Id);

        Assert.Empty(verifier.Verify(line, null, claimLog, log));
        Assert.Contains("replayed log", Assert.Single(verifier.Verify(line, null, claimLog, Altered(log))),
            StringComparison.Ordinal);
        Assert.Contains("cut", Assert.Single(verifier.Verify(line, null, claimLog, log[..^1])),
            StringComparison.Ordinal);
    }

    // Somebody who alters all logs and reckons every hash anew cannot alter the paper.
    [Fact]
    public async Task Verify_EverythingMadeAnew_DoesNotFitThePaper()
    {
        await using var made = await ClaimedCase.WalkedAsync();
        var paper = VerifyLine.Find((await made.ReadyAsync()).Line!)!;
        var log = await made.Cases.ReadAsync(ClaimedCase.Id);
        var builder = new SheetBuilder(ShippedContent.Library);
        var altered = Altered(log);
        var sheet = Assert.IsType<SheetAnswer.Built>(builder.Build(ClaimedCase.Id, altered, ClaimedCase.Unit)).Sheet;
        ImmutableArray<ClaimEntry> anew = [];
        foreach (ClaimEvent happened in new ClaimEvent[] { new ClaimEvent.Begun(ClaimedCase.Id),
            new ClaimEvent.UnitTold(ClaimedCase.Unit), new ClaimEvent.Readied(sheet, null) })
            anew = anew.Add(ClaimChain.Seal(paper.Claim, anew, made.Clock.Time, "Desk Anna", happened));

        Assert.NotEmpty(new SheetVerifier(builder).Verify(paper, null, anew, altered));
    }

    private static ImmutableArray<StoredEvent> Altered(ImmutableArray<StoredEvent> log) =>
        [.. log.Select(stored => stored.Event is OutcomeSeen seen ? stored
            with { Event = seen with { Words = "9 kΩ" } } : stored)];

    private static async Task RunAsync(string file, string sql)
    {
        await using var connection = new SqliteConnection($"Data Source={file};Pooling=False");
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
        command.CommandText = sql;
        Assert.NotEqual(0, await command.ExecuteNonQueryAsync());
    }
}
