using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Told;

namespace DxAssistant.Conversation.State;

/// <summary>Events in, state out. Pure; it needs no content.</summary>
public static class Fold
{
    /// <summary>The state after an event.</summary>
    public static CaseState Apply(CaseState state, CaseEvent happened) => happened switch
    {
        AsideEvent => state,
        // Like a result told early: a way to an access state that is half gone is gone to its end.
        EarlierWorkFound found =>
            state with { Earlier = found.Work, Step = state.Approach is null ? null : state.Step },
        Reopened => Reopen(state),
        Said => state with { Turns = state.Turns + 1, AtMessage = state },
        Replied replied => state with
        {
            Question = replied.Reply.Question, LastReply = replied.Reply,
            Lists = ListPath.After(state, replied.Reply.Question),
            Told = state.Told.Union(CautionsIn(replied.Reply)),
        },
        // Labels of readings half given are of the other language.
        LanguageChosen chosen =>
            state
                with { Language = chosen.Language, Given = [], Lists = [],
                    Question = state.Question is { Kind: QuestionKind.Language } ? null : state.Question },
        TookBack => TakeBack(state),
        Opened opened => state with { ContentVersion = opened.ContentVersion },
        ContentChanged changed =>
            AsFound(state) with { ContentVersion = changed.Version, Step = null, Given = [], Question = null },
        StartedOver anew =>
            CaseState.New
                with { ContentVersion = state.ContentVersion, Turns = state.Turns,
                    Role = anew.AsksWho ? null : state.Role, Language = state.Language, Earlier = state.Earlier },
        StepChosen chosen =>
            Abandon(state) with { Step = new ChosenStep(chosen.Kind, chosen.Id, chosen.Access), Given = [] },
        _ => Effect(state, happened) with { Before = state.AtMessage ?? state.Before, Lists = [] },
    };

    /// <summary>The state after a run of events.</summary>
    public static CaseState Apply(CaseState state, IEnumerable<CaseEvent> events) => events.Aggregate(state, Apply);

    // What a person told or did, as against what the assistant made of it.
    private static CaseState Effect(CaseState state, CaseEvent happened) => happened switch
    {
        RoleStated stated => state with { Role = stated.Role, Step = null },
        SeriesChosen chosen => state with { Series = chosen.Series, ClosedHow = null },
        CodeReported reported => state with { Code = reported.Code, Look = reported.Look, ClosedHow = null },
        CodeDropped => state with { Code = null, Look = null },
        SymptomReported reported => Report(state, reported),
        MannerHeard heard => state with { Manner = heard is { Doubtful: false, ComesAndGoes: false } ? null : heard },
        ModeStated stated => state with { Mode = stated.Mode },
        SymptomPutOff off => state with
        {
            Symptoms = [.. state.Symptoms.Where(known => known.Symptom != off.Symptom)], Step = null,
            PutOff = state.PutOff.Contains(off.Symptom) ? state.PutOff : state.PutOff.Add(off.Symptom),
        },
        WholeTold told => state with
        {
            Unconfirmed = [.. state.Unconfirmed.Where(known => !told.Items.Any(known.IsAbout)), .. told.Items],
            ClosedHow = null,
        },
        ToldSwitched switched => state with { Unconfirmed = Switch(state.Unconfirmed, switched.Place) },
        // A way to an access state that is half gone is gone to its end; else the new evidence may change the next
        // step.
        ToldSettled => state with { Unconfirmed = [], Step = state.Approach is null ? null : state.Step },
        CheckPassedOver passed => Leave(state, passed.Leaves) with
        {
            PassedOver = state.PassedOver.SetItem(passed.Check, passed.Reason), Step = null, Given = [],
        },
        ReadingsGiven given => state with { Given = Merge(state.Given, given.Readings) },
        OutcomeSeen seen => See(state, seen),
        CheckReopened reopened => Reopen(state, reopened.Check),
        ContradictionAccepted accepted => state with { Accepted = state.Accepted.Union(accepted.Checks) },
        ProofGapTold told => state with { GapsTold = state.GapsTold.Union(told.Checks) },
        DoubtSettled settled => Settle(state, settled),
        TroubleDenied denied => state with { IsGone = denied.IsGone },
        LeftToOthers => Abandon(state) with { IsLeft = true, Step = null },
        Closed closed => state with { ClosedHow = closed.How, Step = null, IsLeft = false, IsGone = null },
        _ => WorkDone(state, happened),
    };

    private static CaseState WorkDone(CaseState state, CaseEvent happened) => happened switch
    {
        StepConfirmed confirmed => state with { Approach = new Approach(confirmed.Access, confirmed.Step + 1) },
        AccessReached reached => state with { Access = reached.Access, Approach = null, Told = Sorted.Set },
        AccessRefused refused => Abandon(state) with
        {
            AccessRefused = state.AccessRefused.Add(refused.Access), Step = null,
        },
        RepairDone done => state with { Unverified = done.Repair, Step = null },
        RepairTriedBefore tried => Abandon(state) with
        {
            Repairs = state.Repairs.Add(new TriedRepair(tried.Repair, tried.Fault, false)), Step = null,
        },
        RepairPassedOver passed => state with
        {
            RepairsPassedOver = state.RepairsPassedOver.Add(passed.Repair), Step = null,
        },
        RepairVerified verified => state with
        {
            Unverified = null,
            Repairs = state.Repairs.Add(new TriedRepair(verified.Repair, verified.Fault, verified.Works)
            {
                OrFaults = verified.OrFaults, InQuestion = verified.InQuestion,
            }),
        },
        // The trouble is still there; what was cured is not what is left of it.
        FaultBeside beside => state with
        {
            Unverified = null, Step = null, Repairs =
                state.Repairs.Add(new TriedRepair(beside.Repair, beside.Fault, false) { Beside = beside.Check }),
        },
        RepairToRedo redo => state with
        {
            Unverified = null, Step = new ChosenStep(StepKind.Repair, redo.Repair, redo.Access),
        },
        ResultsOutdated outdated => state with
        {
            Results = [.. state.Results.Where(known => !outdated.Checks.Contains(known.Check))],
            Accepted = state.Accepted.Except(outdated.Checks),
            Outdated = [.. state.Outdated, .. state.Results.Where(known => outdated.Checks.Contains(known.Check))],
        },
        SecondFaultBegun { Carried: { } carried } => CarryOver(state, carried),
        SecondFaultBegun => state with
        {
            Code = null, Look = null, Symptoms = [], Results = [], Outdated = [],
            PassedOver = Sorted.Map<CommandWord>(),
            Accepted = Sorted.Set, Repairs = [], RepairsPassedOver = Sorted.Set, GapsTold = Sorted.Set,
            DoubtsTold = Sorted.Set, Mode = null, IsGone = null, ClosedHow = null,
        },
        _ => throw new ArgumentException($"no such event: {happened.GetType().Name}", nameof(happened)),
    };

    // The trouble, the mode and what cannot be done here are the same; what cured the first fault does not cure the
    // second.
    private static CaseState CarryOver(CaseState state, CarriedOver carried) => Abandon(state) with
    {
        Step = null, Outdated = [], GapsTold = Sorted.Set, IsGone = null, ClosedHow = null,
        Results = [.. state.Results.Where(known => carried.Results.Contains(known.Check))],
        Accepted = state.Accepted.Intersect(carried.Results),
        Repairs = [.. state.Repairs.Select(tried => tried.Works ? tried
            with { Works = false, Beside = carried.Check } : tried)],
    };

    private static CaseState Report(CaseState state, SymptomReported reported) => Abandon(state) with
    {
        Code = null,
        Look = null,
        Manner = null,
        Step = null,
        ClosedHow = null,
        Symptoms = [.. state.Symptoms.Where(known => known.Symptom != reported.Symptom),
            new ReportedSymptom(reported.Symptom, reported.Confidence, reported.Words, reported.ComesAndGoes)],
        PutOff = state.PutOff.Remove(reported.Symptom),
    };

    // What is there counts in full, what is not there no longer; who cannot tell is not asked again.
    private static CaseState Settle(CaseState state, DoubtSettled settled)
    {
        CaseState asked = state with { DoubtsTold = state.DoubtsTold.Add(settled.Symptom) };
        if (settled.IsThere is not { } isThere) return asked;
        return Abandon(asked) with
        {
            Step = null,
            Symptoms = isThere
                ? [.. state.Symptoms.Select(told => told.Symptom == settled.Symptom ? told
                    with { Confidence = 1 } : told)]
                : [.. state.Symptoms.Where(told => told.Symptom != settled.Symptom)],
        };
    }

    // Taking in one of several things that the same words may mean takes the others back.
    private static ImmutableArray<ToldItem> Switch(ImmutableArray<ToldItem> told, int place)
    {
        if (place < 0 || place >= told.Length) return told;
        ToldItem item = told[place];
        return
        [
            .. told.Select((other, at) => at == place ? item with { Taken = !item.Taken }
                : !item.Taken && IsOneOf(item, other)
                    ? other with { Taken = false }
                    : other),
        ];
    }

    private static bool IsOneOf(ToldItem item, ToldItem other) => item.Words == other.Words
        && (item.Thing, other.Thing) is (ToldThing.Tried, ToldThing.Tried) or (ToldThing.Symptom, ToldThing.Symptom);

    private static CaseState See(CaseState state, OutcomeSeen seen) => Leave(state, seen.Leaves) with
    {
        Step = state.Step?.Id == seen.Check ? null : state.Step,
        Given = [],
        PassedOver = state.PassedOver.Remove(seen.Check),
        Results = [.. state.Results.Where(known => known.Check != seen.Check),
            new SeenResult(seen.Check, seen.Outcome, seen.Weights, seen.Verdict, seen.Words, state.Given)],
    };

    // What was told on the way to the state before is told again on the next.
    private static CaseState Leave(CaseState state, string? access) =>
        access is null ? state : state with { Access = access, Approach = null, Told = Sorted.Set };

    private static CaseState Reopen(CaseState state)
    {
        var open = AsFound(state)
            with { ClosedHow = null, Step = null, Given = [], Question = null, Before = null, Lists = [] };
        return !state.Repairs.Any(tried => tried.Works) ? open : open with
        {
            Results = [], Outdated = [], PassedOver = Sorted.Map<CommandWord>(), Accepted = Sorted.Set, Repairs = [],
            RepairsPassedOver = Sorted.Set,
            GapsTold = Sorted.Set,
        };
    }

    private static CaseState Reopen(CaseState state, string check) => state with
    {
        Step = null,
        Given = [],
        PassedOver = state.PassedOver.Remove(check),
        Results = [.. state.Results.Where(known => known.Check != check)],
    };

    private static ImmutableArray<GivenReading> Merge(
        ImmutableArray<GivenReading> known,
        ImmutableArray<GivenReading> added) =>
        [.. known.Where(old => added.All(one => one.Label != old.Label)), .. added];

    private static IEnumerable<string> CautionsIn(Reply reply) => reply.Segments
        .Where(segment => segment.Kind == SegmentKind.Caution)
        .SelectMany(segment => segment.From.OfType<Provenance.Page>())
        .Select(page => page.Path);

    // Words can be taken back, the state of the unit cannot: unless the two agree, the unit counts as found.
    private static CaseState TakeBack(CaseState state)
    {
        if (state.Before is not { } earlier) return state;
        bool stands = state.Approach is null && earlier.Access == state.Access;
        return earlier with
        {
            ContentVersion = state.ContentVersion,
            Turns = state.Turns,
            Language = state.Language,
            Earlier = state.Earlier,
            AtMessage = null,
            Access = stands ? earlier.Access : null,
            Approach = null,
            Given = [],
        };
    }

    // A way to an access state that is left half-way leads nowhere that is known: power may be on again.
    private static CaseState Abandon(CaseState state) => state.Approach is null ? state : AsFound(state);

    // As a job begins: taken to be powered, so that each step to a safe state is asked for again.
    private static CaseState AsFound(CaseState state) => state with { Access = null, Approach = null };
}
