using System.Collections.Immutable;
using DxAssistant.Cases.Jobs;
using DxAssistant.Conversation;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Warranty;

namespace DxAssistant.Cases.Claims;

/// <summary>Builds the sheet of a claim from the log of its case. Pure: the same log, unit and pages give the same
/// sheet.</summary>
public sealed class SheetBuilder(Library library)
{
    /// <param name="log">The whole log of the case, or its beginning.</param>
    public SheetAnswer Build(string caseId, ImmutableArray<StoredEvent> log, ClaimUnit unit)
    {
        if (log.IsEmpty) return new SheetAnswer.None("there is no such case");
        var walk = ClaimedWalk.Of(log);
        if (walk.State.Series is not { } series || !library.Series.ContainsKey(series))
            return new SheetAnswer.None("the case does not say which series the unit is of");
        if (FaultOf(walk) is not { } fault)
            return new SheetAnswer.None("the case has no fault in question: nothing was reported yet");
        return fault.Part is { } part
            ? new SheetAnswer.Built(Sheet(caseId, log, unit, walk, series, fault, part))
            : new SheetAnswer.None(IsProven(walk, fault)
                ? $"“{fault.Title.Text}” is a condition of the site: there is no part to claim"
                : $"no fault was proven, and the likeliest, “{fault.Title.Text}”, is a condition of the site: there is no part to claim");
    }

    private ClaimSheet Sheet(
        string caseId, ImmutableArray<StoredEvent> log, ClaimUnit unit, ClaimedWalk walk, string series,
        FaultPage fault, string part)
    {
        var evidence = Evidence(walk, fault);
        var repair = RepairOf(walk, fault);
        var failed = DateOnly.FromDateTime(log[0].At.UtcDateTime);
        return new ClaimSheet(
            caseId, log[^1].Sequence, log[^1].Hash, library.Version, series,
            library.Series[series].Title.Text, unit, failed, fault.Id.Value, fault.Title.Text, part, repair?.Value,
            repair is { } made ? library.Repairs[made].Title.Text : null, Works(walk),
            Math.Round(Standing.BeliefIn(library, walk.BeforeRepair, fault.Id), 4), Terms(series).ClaimBelief,
            fault.Warranty.Text, evidence, Missing(walk, fault, evidence),
            ClaimCoverage.Of(CoverageDesk.Assess(library, new CoverageQuery(
                series, unit.Installed, unit.Bought, unit.Registered, failed, fault.Id, repair ?? default))))
        {
            Photos = Photos(Job.Of(log)),
            LeftPossible = IsProven(walk, fault) ? null : LeftPossible(walk),
        };
    }

    // By the cure, or by the evidence while the part is not changed or not tried out yet.
    private bool IsProven(ClaimedWalk walk, FaultPage fault) =>
        walk.Cured?.Proves ?? Standing.BeliefIn(library, walk.BeforeRepair, fault.Id) >= library.Settings.Found;

    private ImmutableArray<ClaimSuspect> LeftPossible(ClaimedWalk walk) =>
    [
        .. Standing.Possible(library, walk.BeforeRepair)
            .Select(left => new ClaimSuspect(left.Id.Value, library.Faults[left.Id].Title.Text,
                Math.Round(left.Probability, 4))),
    ];

    private static ImmutableArray<ClaimPhoto>? Photos(Job job) => job.Photos.IsEmpty ? null :
    [
        .. job.Photos.Select(photo => new ClaimPhoto(
            photo.Hash, photo.Shows, job.Units.FirstOrDefault(unit => unit.Number == photo.Unit)?.Serial, photo.At)),
    ];

    private CoveragePage Terms(string series) => library.Coverage[library.Series[series].Coverage];

    private FaultPage? FaultOf(ClaimedWalk walk)
    {
        var fault = walk.Cured is { } cured
            ? new FaultId(cured.Fault) : Standing.Likeliest(library, walk.BeforeRepair);
        return fault is { } id ? library.Faults.GetValueOrDefault(id) : null;
    }

    private RepairId? RepairOf(ClaimedWalk walk, FaultPage fault) =>
        (walk.Cured?.Repair ?? walk.State.Unverified) is { } made
        && library.Repairs.ContainsKey(new RepairId(made))
            ? new RepairId(made)
            : library.Graph.Repairs.FirstOrDefault(repair => repair.Fixes.Contains(fault.Id))?.Id;

    private static bool? Works(ClaimedWalk walk) => walk.Cured is null ? null : true;

    private ImmutableArray<ClaimEvidence> Evidence(ClaimedWalk walk, FaultPage fault) =>
        [.. walk.BeforeRepair.Results.Select(result => Shown(result, walk.Figures, fault))];

    private ClaimEvidence Shown(SeenResult result, SeenFigures figures, FaultPage fault)
    {
        var check = new CheckId(result.Check);
        var verdict = result.Readings.IsEmpty ? null : figures.Of(result.Check)?.Verdict;
        string title = library.Checks.TryGetValue(check, out var page) ? page.Title.Text : result.Check;
        return new ClaimEvidence(
            result.Check, title, fault.ClaimDemands.Contains(check), result.Outcome is not null,
            figures.At(result.Check), result.Words, verdict?.Verdict ?? result.Verdict, verdict?.Healthy,
            verdict?.Readings ?? [], verdict?.Expected ?? [], verdict?.Source);
    }

    // What is measured in cooling alone is not demanded of a trouble in heating.
    private ImmutableArray<string> Missing(ClaimedWalk walk, FaultPage fault, ImmutableArray<ClaimEvidence> evidence) =>
    [
        .. fault.ClaimDemands
            .Where(check => library.Checks[check].IsOfMode(walk.BeforeRepair.Mode))
            .Where(check => !evidence.Any(shown => shown.Settled
                && (shown.Check == check.Value || library.Checks[check].SameAs.Contains(new CheckId(shown.Check)))))
            .Select(check => library.Checks[check].Title.Text),
    ];
}
