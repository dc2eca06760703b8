using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Cases.Claims;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Server.Chat;

namespace DxAssistant.Server.Summary;

/// <summary>Reads a log once and gathers its summary. What was taken back is not in it, as it is not in the
/// state.</summary>
/// <param name="narrowing">Draws how the faults in question of a case narrowed.</param>
internal sealed class SummaryWalk(TitleBook titles, Func<CaseState, Picture?> narrowing)
{
    // As many as a reader weighs at a glance.
    private const int Named = 3;

    private readonly List<SummaryPart> earlier = [];
    private readonly SeenFigures figures = new();
    private readonly Dictionary<string, DateTimeOffset> triedAt = new(StringComparer.Ordinal);
    private readonly Dictionary<SeenResult, SummaryCheck> outdated = [];
    private readonly List<string> versions = [];
    private ImmutableArray<BeliefLine> believed = [];

    // So many of the repairs were made in the part before, and stand there.
    private int carried;

    public CaseState State { get; private set; } = CaseState.New;

    public ImmutableArray<string> Versions => [.. versions.Distinct()];

    public ImmutableArray<SummaryPart> Parts() => [.. earlier, Part()];

    public void Take(StoredEvent stored)
    {
        bool turnsOver = stored.Event is SecondFaultBegun or StartedOver;
        if (turnsOver && !State.Symptoms.IsEmpty) earlier.Add(Part());
        if (turnsOver) believed = [];
        if (stored.Event is ResultsOutdated stale) Keep(stale);
        State = Fold.Apply(State, stored.Event);
        if (turnsOver) carried = State.Repairs.Length;
        figures.Take(stored);
        Note(stored);
    }

    // The check may be done again: its figures now are those of the result that counts no longer.
    private void Keep(ResultsOutdated stale)
    {
        foreach (SeenResult result in State.Results.Where(known => stale.Checks.Contains(known.Check)))
            outdated[result] = Check(result);
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
            // A closed case lists none: what stood before it was closed is left.
            case Replied { Reply.Belief: { IsEmpty: false } lines }:
                believed = lines;
                break;
            case RepairTriedBefore tried:
                triedAt[tried.Repair] = stored.At;
                break;
            case RepairVerified verified:
                triedAt[verified.Repair] = stored.At;
                break;
            case FaultBeside beside:
                triedAt[beside.Repair] = stored.At;
                break;
        }
    }

    private SummaryPart Part() => new(
        State.Series is { } series ? TitleBook.Find(titles.Series, series) : null,
        [.. State.Symptoms.Select(s => TitleBook.Find(titles.Symptoms, s.Symptom))],
        [.. State.Symptoms.Select(s => s.Words).Distinct()],
        [.. State.Outdated.Select(result => outdated[result]).Concat(State.Results.Select(Check))
            .OrderBy(check => check.At)],
        [.. State.PassedOver.Select(
            p => new SummaryLeftOut(TitleBook.Find(titles.Checks, p.Key), CommandNames.Label(p.Value)))],
        Repairs(),
        State.Repairs.FirstOrDefault(r => r.Proves) is { } cured ? Proven(cured) : null,
        InQuestion(),
        State.ClosedHow,
        narrowing(State));

    // What the checks did not tell apart is named together, as the conclusion does.
    private string Proven(TriedRepair cured) =>
        string.Join(" / ", cured.OrFaults.Prepend(cured.Fault).Select(fault => TitleBook.Find(titles.Faults, fault)));

    // What is left at the end of a part that proved nothing.
    private ImmutableArray<string> InQuestion() =>
        State.ClosedHow is null || State.Repairs.Any(r => r.Proves) ? []
        : State.Repairs.LastOrDefault(r => r.Works)?.InQuestion is { } left
        ? [.. left.Select(fault => TitleBook.Find(titles.Faults, fault))]
        : [.. believed.Where(line => line.Fault != FaultId.NoneOfThese.Value).Select(line => line.Title).Take(Named)];

    private SummaryCheck Check(SeenResult result)
    {
        var verdict = result.Readings.IsEmpty ? null : figures.Of(result.Check);
        return new SummaryCheck(TitleBook.Find(titles.Checks, result.Check), figures.At(result.Check), result.Words,
            verdict?.Verdict, verdict?.Pictures ?? []);
    }

    private ImmutableArray<SummaryRepair> Repairs()
    {
        var tried = State.Repairs.Skip(carried).Select(r => new SummaryRepair(
            TitleBook.Find(titles.Repairs, r.Repair), TitleBook.Find(titles.Faults, r.Fault),
            r.Beside is null ? r.Works : null, triedAt[r.Repair],
            r.Beside is { } beside ? TitleBook.Find(titles.Checks, beside) : null));
        return State.Unverified is { } open
            ? [.. tried, new SummaryRepair(TitleBook.Find(titles.Repairs, open), null, null, null)]
            : [.. tried];
    }
}
