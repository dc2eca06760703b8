using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Cases.Claims;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Server.Chat;

namespace DxAssistant.Server.Summary;

/// <summary>Reads a log once and gathers its summary. What was taken back is not in it, as it is not in the
/// state.</summary>
/// <param name="narrowing">Draws how the faults in question of a case narrowed.</param>
internal sealed class SummaryWalk(TitleBook titles, Func<CaseState, Picture?> narrowing)
{
    private readonly List<SummaryPart> earlier = [];
    private readonly SeenFigures figures = new();
    private readonly Dictionary<string, DateTimeOffset> triedAt = new(StringComparer.Ordinal);
    private readonly Dictionary<SeenResult, SummaryCheck> outdated = [];
    private readonly List<string> versions = [];

    public CaseState State { get; private set; } = CaseState.New;

    public ImmutableArray<string> Versions => [.. versions.Distinct()];

    public ImmutableArray<SummaryPart> Parts() => [.. earlier, Part()];

    public void Take(StoredEvent stored)
    {
        bool turnsOver = stored.Event is SecondFaultBegun or StartedOver;
        if (turnsOver && !State.Symptoms.IsEmpty) earlier.Add(Part());
        if (stored.Event is ResultsOutdated stale) Keep(stale);
        State = Fold.Apply(State, stored.Event);
        figures.Take(stored);
        Note(stored);
    }

    // The check may be done again: its figures now are those of the result that counts no longer.
    private void Keep(ResultsOutdated stale)
    {
        foreach (SeenResult result in State.Results.Where(known => stale.Checks.Contains(known.Check))) outdated[result] = Check(result);
    }

    private void Note(StoredEvent stored)
    {
        switch (stored.Event)
        {
            case Opened opened:
                versions.Add(opened.ContentVersion);
                break;
            case ContentChanged changed:
                versions.Add(changed.Version);
                break;
            case RepairTriedBefore tried:
                triedAt[tried.Repair] = stored.At;
                break;
            case RepairVerified verified:
                triedAt[verified.Repair] = stored.At;
                break;
        }
    }

    private SummaryPart Part() => new(
        State.Series is { } series ? TitleBook.Find(titles.Series, series) : null,
        [.. State.Symptoms.Select(s => TitleBook.Find(titles.Symptoms, s.Symptom))],
        [.. State.Symptoms.Select(s => s.Words).Distinct()],
        [.. State.Outdated.Select(result => outdated[result]).Concat(State.Results.Select(Check)).OrderBy(check => check.At)],
        [.. State.PassedOver.Select(
            p => new SummaryLeftOut(TitleBook.Find(titles.Checks, p.Key), CommandNames.Label(p.Value)))],
        Repairs(),
        State.Repairs.FirstOrDefault(r => r.Works) is { } cured ? Proven(cured) : null,
        State.ClosedHow,
        narrowing(State));

    // What the checks did not tell apart is named together, as the conclusion does.
    private string Proven(TriedRepair cured) => string.Join(" / ", cured.OrFaults.Prepend(cured.Fault).Select(fault => TitleBook.Find(titles.Faults, fault)));

    private SummaryCheck Check(SeenResult result)
    {
        var verdict = result.Readings.IsEmpty ? null : figures.Of(result.Check);
        return new SummaryCheck(TitleBook.Find(titles.Checks, result.Check), figures.At(result.Check), result.Words,
            verdict?.Verdict, verdict?.Pictures ?? []);
    }

    private ImmutableArray<SummaryRepair> Repairs()
    {
        var tried = State.Repairs.Select(r => new SummaryRepair(
            TitleBook.Find(titles.Repairs, r.Repair), TitleBook.Find(titles.Faults, r.Fault), r.Works,
            triedAt[r.Repair]));
        return State.Unverified is { } open
            ? [.. tried, new SummaryRepair(TitleBook.Find(titles.Repairs, open), null, null, null)]
            : [.. tried];
    }
}
