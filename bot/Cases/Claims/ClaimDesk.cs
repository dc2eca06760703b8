using System.Collections.Immutable;
using System.Text.Json;
using DxAssistant.Cases.Jobs;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Cases.Claims;

/// <summary>Begins claims and takes what is done to them: reads the logs, decides, appends.</summary>
/// <param name="library">The pages to use now.</param>
/// <param name="tells">Whether other programs are told of changes: then the news is kept until they were.</param>
/// <param name="saved">Called after each change that was saved.</param>
public sealed class ClaimDesk(
    ICaseStore cases, IClaimStore claims, TimeProvider clock, Func<Library> library, bool tells = false,
    Action<Claim>? saved = null)
{
    /// <summary>Begins a claim from a case; one that is open already is given again.</summary>
    /// <param name="name">The name for a new claim, as <see cref="ClaimId.New"/> makes it; null for any.</param>
    public async Task<ClaimDone> BeginAsync(string caseId, Clerk who, string? name = null,
        CancellationToken cancel = default)
    {
        var log = await cases.ReadAsync(caseId, cancel);
        if (log.IsEmpty) return new ClaimDone.Unknown();
        var open = (await claims.ListAsync(ofCase: caseId, cancel: cancel)).FirstOrDefault(
            head => head.State != ClaimState.Declined);
        if (open is not null) return await AgainAsync((await ShowAsync(open.Id, cancel))!, log, who, cancel);
        var now = new SheetBuilder(library()).Build(caseId, log, ClaimUnit.Unknown);
        return now is SheetAnswer.None none
            ? new ClaimDone.Refused([none.Why])
            : await DescribeAsync(await AppendAsync(name
                ?? ClaimId.New(), [], who, new ClaimEvent.Begun(caseId), log, cancel), Job.Of(log).Unit, who, cancel);
    }

    // The unit may have been written down on the job only after the claim was begun.
    private async Task<ClaimDone> AgainAsync(ClaimExport claim, ImmutableArray<StoredEvent> log, Clerk who,
        CancellationToken cancel) =>
        await DescribeAsync(new ClaimDone.Saved(claim),
            claim.State == ClaimState.Draft && claim.Unit == ClaimUnit.Unknown ? Job.Of(log).Unit : null, who, cancel);

    // What the job says of the unit need not be typed again; where it stands is the customer's, and is told only on
    // purpose.
    private Task<ClaimDone> DescribeAsync(ClaimDone begun, JobUnit? unit, Clerk who, CancellationToken cancel) =>
        begun is ClaimDone.Saved saved && unit is not null
            ? ActAsync(saved.Claim.Id,
                new ClaimAct.TellUnit(new ClaimUnit(unit.Model, unit.Serial, null, unit.Installed)), who,
                saved.Claim.Log.Length, cancel)
            : Task.FromResult(begun);

    /// <summary>Does something to a claim.</summary>
    /// <param name="after">The last entry the person saw: what was done since is not overridden.</param>
    public async Task<ClaimDone> ActAsync(string id, ClaimAct act, Clerk who, long after,
        CancellationToken cancel = default)
    {
        if (await FindAsync(id, cancel) is not { } claim) return new ClaimDone.Unknown();
        var log = await cases.ReadAsync(claim.Case, cancel);
        var now = new SheetBuilder(library()).Build(claim.Case, log, claim.Unit);
        if (claim.Log.Length != after) return new ClaimDone.Overtaken(ClaimExport.Of(claim, now));
        if (now is SheetAnswer.None none && act is ClaimAct.MakeReady) return new ClaimDone.Refused([none.Why]);
        var sheet = (now as SheetAnswer.Built)?.Sheet ?? claim.Sheet;
        return ClaimRules.Decide(claim, act, who, sheet!) switch
        {
            ClaimAnswer.Done done => await AppendAsync(id, claim.Log, who, done.Event, log, cancel),
            ClaimAnswer.Refused refused => new ClaimDone.Refused(refused.Missing),
            var other => throw new InvalidOperationException($"no such answer: {other.GetType().Name}"),
        };
    }

    /// <summary>A claim as it stands; null when there is no such claim.</summary>
    public async Task<ClaimExport?> ShowAsync(string id, CancellationToken cancel = default) =>
        await FindAsync(id, cancel) is { } claim ? await ViewAsync(claim, cancel) : null;

    /// <summary>What is wrong with a sheet; empty when nothing is.</summary>
    /// <param name="shown">The sheet as it is shown; null when only its line is known.</param>
    public async Task<ImmutableArray<string>> VerifyAsync(VerifyLine line, ClaimSheet? shown = null,
        CancellationToken cancel = default)
    {
        try
        {
            var log = await claims.ReadAsync(line.Claim, cancel);
            var caseLog = log is [{ Event: ClaimEvent.Begun begun }, ..]
                ? await cases.ReadAsync(begun.Case, cancel)
                : [];
            return new SheetVerifier(new SheetBuilder(library())).Verify(line, shown, log, caseLog);
        }
        catch (CaseFileException error)
        {
            return [error.Message];
        }
    }

    /// <summary>What is wrong with a claim that was given out as JSON; empty when nothing is.</summary>
    public async Task<ImmutableArray<string>> VerifyAsync(VerifyLine line, ClaimExport shown,
        CancellationToken cancel = default)
    {
        var wrong = await VerifyAsync(line, shown.Sheet, cancel);
        if (!wrong.IsEmpty) return wrong;
        return shown.Id == line.Claim
            ? SheetVerifier.Verify(shown, await claims.ReadAsync(line.Claim, cancel))
            : ["the file names another claim than its line: the file was changed"];
    }

    private async Task<Claim?> FindAsync(string id, CancellationToken cancel)
    {
        var log = ClaimId.IsWellFormed(id) ? await claims.ReadAsync(id, cancel) : [];
        return log.IsEmpty ? null
            : ClaimChain.FirstAltered(id, log) is { } entry
                ? throw new CaseFileException(
                    FormattableString.Invariant(
                        $"entry {entry} of claim {id} was altered: restore the claims from a backup"))
                : Claim.Of(id, log);
    }

    private async Task<ClaimExport> ViewAsync(Claim claim, CancellationToken cancel) => ClaimExport.Of(
        claim, new SheetBuilder(library()).Build(claim.Case, await cases.ReadAsync(claim.Case, cancel), claim.Unit));

    private async Task<ClaimDone> AppendAsync(
        string id, ImmutableArray<ClaimEntry> log, Clerk who, ClaimEvent happened, ImmutableArray<StoredEvent> caseLog,
        CancellationToken cancel)
    {
        var claim = Claim.Of(id, log.Add(ClaimChain.Seal(id, log, StoreClock.Now(clock), who.Name, happened)));
        bool added = await claims.AppendAsync(claim, News(claim), cancel);
        if (!added) return new ClaimDone.Overtaken((await ShowAsync(id, cancel))!);
        saved?.Invoke(claim);
        return new ClaimDone.Saved(
            ClaimExport.Of(claim, new SheetBuilder(library()).Build(claim.Case, caseLog, claim.Unit)));
    }

    private string? News(Claim claim) => !tells || claim.Log[^1].Event is ClaimEvent.UnitTold
        ? null : JsonSerializer.Serialize(ClaimNews.Of(claim), ClaimJson.Default.ClaimNews);
}
