using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.State;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation;

/// <summary>A case's state seen through the pages: what it says about the faults.</summary>
/// <remarks>What the content no longer holds is left out; nothing is made up in its place.</remarks>
/// <param name="known">Beliefs in mind; null where none are kept.</param>
internal sealed class CaseView(Library library, CaseState state, KnownBeliefs? known = null)
{
    private const int LinesShown = 6;
    private Belief? _belief;

    public CaseState State { get; } = state;

    public AccessId Access { get; } =
        state.Access is { } known && library.Access.ContainsKey(new AccessId(known))
            ? new AccessId(known)
            : library.Graph.Access.Start;

    /// <summary>The person at the unit; the least entitled role until it is known.</summary>
    public Role Role { get; } =
        library.Roles.FirstOrDefault(page => page.Role.Id == state.Role)?.Role ?? library.Roles[0].Role;

    public SeriesPage? Series { get; } =
        state.Series is { } series ? library.Series.GetValueOrDefault(series) : null;

    /// <summary>The access states this person may bring the unit to from where it stands.</summary>
    public AccessStates OpenAccess => library.Graph.Access.OpenTo(Role, Access, Refused());

    public Belief Belief => _belief ??= known?.Of(State, () => BeliefAfter(Evidence)) ?? BeliefAfter(Evidence);

    /// <summary>The belief after some of the evidence.</summary>
    public Belief BeliefAfter(IEnumerable<Evidence> evidence) =>
        library.Graph.BelieveWhere(Applies, evidence, library.Settings.Contradiction);

    /// <summary>Everything learnt, symptoms first, then results, repairs made and earlier work.</summary>
    public IEnumerable<Evidence> Evidence => Learn();

    /// <summary>What was learnt, in the words of the pages and of the person.</summary>
    public string Learnt(IEnumerable<Evidence> evidence) => string.Join(", ", evidence.Select(Learnt));

    private string Learnt(Evidence evidence) => evidence switch
    {
        Graph.Evidence.SymptomReported symptom => library.Symptoms[symptom.Symptom].Title.Text,
        Graph.Evidence.OutcomeSeen seen => $"{library.Checks[seen.Check].Title.Text}: {Words(seen.Check)}",
        Graph.Evidence.RepairFailed failed =>
            new Speaker(library.Phrases).Text("ledger-tried", Slot.Of("repair", library.Repairs[failed.Repair].Title)),
        Graph.Evidence.FaultMended mended =>
            new Speaker(library.Phrases).Text("ledger-mended", Slot.Of("repair", library.Repairs[mended.Repair].Title)),
        Graph.Evidence.RepairedEarlier earlier => library.Repairs[earlier.Repair].Title.Text,
        _ => "",
    };

    private string Words(CheckId check) => State.Results.First(known => known.Check == check.Value).Words;

    /// <summary>The results whose checks are still in the content, in the order they came.</summary>
    public IEnumerable<SeenResult> Results => State.Results.Where(Fits);

    /// <summary>The most likely faults, as they are shown.</summary>
    public ImmutableArray<BeliefLine> Lines() => State.Symptoms.IsEmpty || State.ClosedHow is not null
        ? []
        : [.. Belief.Ranked.Where(ranked => ranked.Probability >= 0.0005).Take(LinesShown).Select(Line)];

    public bool AppliesHere(ImmutableSortedSet<string> series) =>
        series.IsEmpty || (State.Series is { } here && series.Contains(here));

    /// <summary>
    /// Whether a check is for this series, this person, this mode and these symptoms, and not found in another way;
    /// what the person may do is another matter.
    /// </summary>
    public bool IsFor(CheckPage page) =>
        AppliesHere(page.Series)
        && !(page.OwnersOnly && Role.Rank > 0)
        && page.IsOfMode(State.Mode)
        && !Results.Any(result => StandsFor(result, page.Id))
        && !State.Symptoms.Any(reported => page.NotAt.Contains(new SymptomId(reported.Symptom)))
        && (page.OnlyAt.IsEmpty
            || State.Symptoms.Any(reported => page.OnlyAt.Contains(new SymptomId(reported.Symptom))));

    // A result that is as likely under any fault leaves the other look to be done.
    private bool StandsFor(SeenResult result, CheckId check) =>
        result.Check != check.Value && result.Outcome is { } seen
        && library.Checks[new CheckId(result.Check)].SameAs.Contains(check)
        && library.Graph.Find(new CheckId(result.Check)) is { } done && done.Tells(new OutcomeId(seen));

    // What finds the same in two ways counts once: as it was found last.
    private bool IsFoundAnew(SeenResult result) => State.Results.SkipWhile(known => known.Check != result.Check).Skip(1)
        .Any(later => Fits(later) && StandsFor(later, new CheckId(result.Check)));

    private BeliefLine Line(RankedFault ranked) =>
        new(ranked.Id.Value, library.Faults[ranked.Id].Title.Text, Math.Round(ranked.Probability, 3));

    private IEnumerable<Evidence> Learn()
    {
        foreach (ReportedSymptom reported in State.Symptoms)
            if (library.Graph.Find(new SymptomId(reported.Symptom)) is not null)
                yield return new Graph.Evidence.SymptomReported(new SymptomId(reported.Symptom), reported.Confidence);
        foreach (SeenResult result in Results.Where(result => !IsFoundAnew(result)))
            yield return new Graph.Evidence.OutcomeSeen(new CheckId(result.Check), result.Weights);
        foreach (Evidence made in DoneWork.Says(library, State)) yield return made;
        foreach (EarlierEffect effect in EarlierEffect.Of(library, State))
            yield return new Graph.Evidence.RepairedEarlier(new RepairId(effect.Work.Repair), effect.Odds);
    }

    private ImmutableSortedSet<AccessId> Refused() => [.. State.AccessRefused.Select(id => new AccessId(id))];

    private bool Fits(SeenResult result) =>
        library.Graph.Find(new CheckId(result.Check)) is { } check && check.Outcomes.Length == result.Weights.Length;

    private bool Applies(FaultId fault) =>
        library.Faults.TryGetValue(fault, out FaultPage? page) && AppliesHere(page.Series);
}
