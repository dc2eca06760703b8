using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>The ends of a walk that are no repair: a fault that comes and goes, or work for somebody else.</summary>
internal sealed class EndOfWalk(ClosedCase closed, ThingsToBring bring, UnseenRepairs unseen)
{
    /// <summary>
    /// Nothing was found; but what somebody else can mend, or what can burn, is not watched by who cannot mend it.
    /// </summary>
    public void WatchOrBook(TurnDraft turn, RepairPage advice)
    {
        if (IsForSomebodyElse(turn)) Say(turn);
        else Watch(turn, advice);
    }

    /// <summary>Nothing was found: what to watch and record until it shows again.</summary>
    public void Watch(TurnDraft turn, RepairPage advice, string conclusion = "closed-watch")
    {
        turn.Say(SegmentKind.Conclusion, conclusion);
        if (turn.View.Access != turn.Library.Graph.Access.Start) turn.Say(SegmentKind.Caution, "closed-left-open");
        if (turn.State.Symptoms.FirstOrDefault(known => known.ComesAndGoes) is { } fitful)
            turn.Say(SegmentKind.Advice, "closed-comes-and-goes", Slot.Said("words", fitful.Words));
        Suspects(turn, withParts: false);
        if (MayBurn(turn) && !turn.Says("closed-can-burn")) turn.Say(SegmentKind.Caution, "closed-can-burn");
        turn.Quote(SegmentKind.Advice, advice.Steps);
        turn.Happen(new Closed("watch"));
        closed.Decide(turn);
    }

    /// <summary>Whether a repair is none: what "cures" none of these is advice, and the end.</summary>
    public static bool IsWatching(Library library, RepairId repair) =>
        library.Graph.Find(repair)?.Fixes is [var only] && only == FaultId.NoneOfThese;

    /// <summary>The advice for what comes and goes; null when no page gives it.</summary>
    public static RepairPage? Watching(Library library) => library.Graph.Repairs
        .Where(repair => IsWatching(library, repair.Id)).Select(repair => library.Repairs[repair.Id]).FirstOrDefault();

    /// <summary>No step is left for this person here: who is needed, what is suspected, what to bring.</summary>
    public void Say(TurnDraft turn)
    {
        if (Undone(turn) is { IsEmpty: false } undone)
        {
            SayUndone(turn, undone);
            return;
        }

        RolePage? needed = Needed(turn);
        turn.Say(SegmentKind.Conclusion, turn.View.Role.Rank == 0 ? "closed-owner-done" : "closed-no-way");
        if (turn.View.Role.Rank == 0) turn.Say(SegmentKind.Advice, "closed-book-owner");
        else if (needed is not null) turn.Say(SegmentKind.Advice, "closed-book", Slot.Of("role", needed.Name));
        SayNotLookedAt(turn);
        if (DangerTrouble.IsGas(turn)) turn.Say(SegmentKind.Caution, "closed-gas");
        if (turn.View.Role.Rank > 0 && StepChooser.DemandsSafeState(turn.Library, turn.State))
            turn.Say(SegmentKind.Caution, "closed-locked-off");
        Suspects(turn, withParts: true);
        if (needed is not null) bring.Say(turn, needed);
        turn.Happen(new Closed("book"));
        closed.Decide(turn);
    }

    /// <summary>The person goes no further: how to leave the unit, what is suspected, what to bring.</summary>
    public void Leave(TurnDraft turn)
    {
        turn.Say(SegmentKind.Conclusion, "closed-left");
        if (StepChooser.DemandsSafeState(turn.Library, turn.State)) turn.Say(SegmentKind.Caution, "closed-stop");
        if (DangerTrouble.IsGas(turn)) turn.Say(SegmentKind.Caution, "closed-gas");
        if (turn.View.Access != turn.Library.Graph.Access.Start) turn.Say(SegmentKind.Caution, "closed-left-open");
        if (turn.View.Role.Rank == 0) turn.Say(SegmentKind.Advice, "closed-book-owner");
        if (!turn.State.Symptoms.IsEmpty) SayWhatNext(turn);
        turn.Happen(new Closed("book"));
        closed.Decide(turn);
    }

    // The repairs left out that may cure the likeliest fault: they are this person's work, or their page says whose,
    // and nobody else is called for before.
    private static ImmutableArray<RepairPage> Undone(TurnDraft turn) =>
        turn.View.Belief.Ranked is not [var likeliest, ..] ? [] :
    [
        .. turn.Library.Graph.RepairsOf(likeliest.Id)
            .Where(repair => turn.State.RepairsPassedOver.Contains(repair.Id.Value) && turn.View.Role.May(repair.Who)
                && !IsWatching(turn.Library, repair.Id))
            .Select(repair => turn.Library.Repairs[repair.Id]),
    ];

    private void SayUndone(TurnDraft turn, ImmutableArray<RepairPage> undone)
    {
        turn.Say(SegmentKind.Conclusion, "closed-undone", Slot.List("repairs", [.. undone.Select(page => page.Title)]));
        if (DangerTrouble.IsGas(turn)) turn.Say(SegmentKind.Caution, "closed-gas");
        if (turn.View.Role.Rank > 0 && StepChooser.DemandsSafeState(turn.Library, turn.State))
            turn.Say(SegmentKind.Caution, "closed-locked-off");
        else if (turn.View.Access != turn.Library.Graph.Access.Start) turn.Say(SegmentKind.Caution, "closed-left-open");
        Suspects(turn, withParts: true);
        if (turn.View.Role.Rank == 0) turn.Say(SegmentKind.Advice, "closed-undone-owner");
        turn.Happen(new Closed("book"));
        closed.Decide(turn);
    }

    private void SayWhatNext(TurnDraft turn)
    {
        Suspects(turn, withParts: true);
        if (Needed(turn) is { } needed) bring.Say(turn, needed);
    }

    // What would have shown an owner's repair is looked at by whoever comes next.
    private void SayNotLookedAt(TurnDraft turn)
    {
        ImmutableArray<Passage> left = [.. unseen.LeftOut(turn.View).Take(turn.Library.Settings.BeginWith)
            .Select(check => turn.Library.Checks[check].Title)];
        if (!left.IsEmpty) turn.Say(SegmentKind.Advice, "closed-not-looked", Slot.List("checks", left));
    }

    private bool IsForSomebodyElse(TurnDraft turn) => Needed(turn) is not null
        && ((turn.View.Belief.Ranked is [var first, ..] && first.Id != FaultId.NoneOfThese)
            || BeyondThisRole(turn) >= turn.Library.Settings.Booked || (turn.View.Role.Rank == 0 && MayBurn(turn)));

    // How likely it is something that only somebody else can mend, or see.
    private double BeyondThisRole(TurnDraft turn)
    {
        ImmutableHashSet<RepairId> barred = [.. unseen.Of(turn.View)];
        return turn.View.Belief.Ranked
            .Where(ranked => !turn.Library.Graph.RepairsOf(ranked.Id)
                .Any(repair => turn.View.Role.May(repair.Who) && !barred.Contains(repair.Id)))
            .Sum(ranked => ranked.Probability);
    }

    private static bool MayBurn(TurnDraft turn) => SuspectsOf(turn).Any(page => page.CanBurn);

    /// <summary>The faults that are likely enough to be named, likeliest first.</summary>
    public static IEnumerable<FaultPage> SuspectsOf(TurnDraft turn) => turn.View.Belief.Ranked
        .Where(ranked => ranked.Id != FaultId.NoneOfThese && ranked.Probability >= turn.Library.Settings.Suspected)
        .Select(ranked => turn.Library.Faults[ranked.Id]);

    private static void Suspects(TurnDraft turn, bool withParts)
    {
        ImmutableArray<FaultPage> suspects = [.. SuspectsOf(turn).Take(turn.Library.Settings.Suspects)];
        if (suspects.IsEmpty) return;
        turn.Say(SegmentKind.Advice, "closed-suspects", Slot.List("faults", [.. suspects.Select(page => page.Title)]));
        ImmutableArray<Passage> parts = [.. suspects.Where(page => page.Part is not null)
            .Select(page => new Passage(page.Part!, page.Title.Place)).DistinctBy(part => part.Text)];
        if (turn.View.Role.Rank == 0 && suspects.Any(page => page.CanBurn))
            turn.Say(SegmentKind.Caution, "closed-can-burn");
        if (!parts.IsEmpty && withParts) turn.Say(SegmentKind.Advice, "closed-bring", Slot.List("parts", parts));
    }

    // The least role above this one for which something is left to do.
    private static RolePage? Needed(TurnDraft turn)
    {
        ImmutableHashSet<FaultId> live =
            [.. turn.View.Belief.Ranked.Where(ranked => ranked.Probability > 0).Select(ranked => ranked.Id)];
        int? rank = turn.Library.Graph.Repairs
            .Where(repair => repair.Fixes.Any(live.Contains) && !turn.View.Role.May(repair.Who))
            .Select(repair => (int?)repair.Who.Rank).Min();
        return rank is null ? null : turn.Library.Roles.FirstOrDefault(page => page.Role.Rank == rank);
    }
}
