using System.Collections.Immutable;
using DxAssistant.Cases;
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
    private readonly Dictionary<string, DateTimeOffset> seenAt = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Segment?> figures = new(StringComparer.Ordinal);
    private readonly Dictionary<string, DateTimeOffset> triedAt = new(StringComparer.Ordinal);
    private readonly List<string> versions = [];
    private readonly List<string> seenThisTurn = [];

    public CaseState State { get; private set; } = CaseState.New;

    public ImmutableArray<string> Versions => [.. versions.Distinct()];

    public ImmutableArray<SummaryPart> Parts() => [.. earlier, Part()];

    public void Take(StoredEvent stored)
    {
        bool turnsOver = stored.Event is SecondFaultBegun or StartedOver;
        if (turnsOver && !State.Symptoms.IsEmpty) earlier.Add(Part());
        State = Fold.Apply(State, stored.Event);
        Note(stored);
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
            case Said:
                seenThisTurn.Clear();
                break;
            case OutcomeSeen seen:
                if (seen.Verdict is not null) seenThisTurn.Add(seen.Check);
                seenAt[seen.Check] = stored.At;
                break;
            case RepairTriedBefore tried:
                triedAt[tried.Repair] = stored.At;
                break;
            case RepairVerified verified:
                triedAt[verified.Repair] = stored.At;
                break;
            case Replied replied:
                NoteFigures(replied.Reply);
                break;
        }
    }

    // The verdicts of a reply are in the order of the results it took.
    private void NoteFigures(Reply reply)
    {
        var verdicts = reply.Segments.Where(s => s.Verdict is not null).ToList();
        for (int i = 0; i < seenThisTurn.Count; i++) figures[seenThisTurn[i]] = verdicts.ElementAtOrDefault(i);
    }

    private SummaryPart Part() => new(
        State.Series is { } series ? TitleBook.Find(titles.Series, series) : null,
        [.. State.Symptoms.Select(s => TitleBook.Find(titles.Symptoms, s.Symptom))],
        [.. State.Symptoms.Select(s => s.Words).Distinct()],
        [.. State.Results.Select(Check)],
        [.. State.PassedOver.Select(
            p => new SummaryLeftOut(TitleBook.Find(titles.Checks, p.Key), CommandNames.Label(p.Value)))],
        Repairs(),
        State.Repairs.FirstOrDefault(r => r.Works) is { } cured ? TitleBook.Find(titles.Faults, cured.Fault) : null,
        State.ClosedHow,
        narrowing(State));

    private SummaryCheck Check(SeenResult result)
    {
        var verdict = result.Readings.IsEmpty ? null : figures.GetValueOrDefault(result.Check);
        return new SummaryCheck(TitleBook.Find(titles.Checks, result.Check), seenAt[result.Check], result.Words,
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
