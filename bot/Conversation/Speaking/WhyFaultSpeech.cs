using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Replies;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Speaking;

/// <summary>
/// Says how likely one fault is now, what speaks for it and what against it, and what would prove it.
/// </summary>
internal static class WhyFaultSpeech
{
    // Said as ruled out from here down, as the bars beside the question leave it out.
    private const double RuledOut = 0.0005;

    public static void Say(TurnDraft turn, FaultPage page)
    {
        Slot fault = Slot.Of("fault", page.Title);
        if (!turn.View.AppliesHere(page.Series)) turn.Say(SegmentKind.Why, "fault-not-here", fault);
        else if (turn.View.Belief.Ranked.All(ranked => ranked.Id != page.Id))
            turn.Say(SegmentKind.Why, "fault-no-sign", fault);
        else SayWeighed(turn, page, fault);
    }

    /// <summary>
    /// Says how likely faults are that a repair does not mend, the likeliest of them, and what speaks against each.
    /// </summary>
    public static void SayRivals(TurnDraft turn, Repair repair)
    {
        const int most = 3;
        foreach (FaultPage page in turn.View.Belief.Ranked.Where(ranked => ranked is { Probability: > 0 }
            && ranked.Id != FaultId.NoneOfThese && !repair.Fixes.Contains(ranked.Id))
                     .Take(most).Select(ranked => turn.Library.Faults[ranked.Id]))
            SayShare(turn, page, Slot.Of("fault", page.Title)).SayAgainst();
    }

    /// <summary>Says how likely the likeliest faults are, and what speaks for and against each.</summary>
    public static void SayLikeliest(TurnDraft turn)
    {
        foreach (FaultPage page in EndOfWalk.SuspectsOf(turn).Take(turn.Library.Settings.Suspects))
            SayShare(turn, page, Slot.Of("fault", page.Title)).Say();
    }

    private static void SayWeighed(TurnDraft turn, FaultPage page, Slot fault)
    {
        FaultLedger ledger = SayShare(turn, page, fault);
        if (!ledger.Say()) turn.Say(SegmentKind.Why, ledger.AtFirst() is null ? "fault-untested" : "fault-little");
        if (page.Id != FaultId.NoneOfThese) turn.Say(SegmentKind.Why, "conclusion-proof", Slot.Of("proof", page.Proof));
    }

    private static FaultLedger SayShare(TurnDraft turn, FaultPage page, Slot fault)
    {
        var ledger = new FaultLedger(turn, page.Id);
        double probability = turn.View.Belief.ProbabilityOf(page.Id);
        Segment share = Mended(turn, page, fault) ?? Now(turn, fault, probability, ledger.AtFirst());
        turn.Say(share with { Ledger = ledger.Figures(), Pictures = ledger.Drawn() is { } drawn ? [drawn] : null });
        return ledger;
    }

    private static Segment Now(TurnDraft turn, Slot fault, double probability, double? atFirst)
    {
        if (probability < RuledOut) return turn.Speaker.Say(SegmentKind.Why, "fault-out", fault);
        var percent = Slot.Figure("percent", ConclusionSpeech.Percent(probability));
        return atFirst is { } first
            ? turn.Speaker.Say(SegmentKind.Why, "fault-share-since", fault, percent,
                Slot.Figure("first", ConclusionSpeech.Percent(first)))
            : turn.Speaker.Say(SegmentKind.Why, "fault-share", fault, percent);
    }

    // What was found and put right is no longer in question, and was no error for that.
    private static Segment? Mended(TurnDraft turn, FaultPage page, Slot fault) =>
        turn.State.Repairs.LastOrDefault(tried => tried.Fault == page.Id.Value) is { Works: false, Beside: { } beside,
            InQuestion: null } made
        && turn.Library.Repairs.TryGetValue(new RepairId(made.Repair), out RepairPage? repair)
        && turn.Library.Checks.TryGetValue(new CheckId(beside), out CheckPage? check)
            ? turn.Speaker.Say(SegmentKind.Why, "fault-mended", fault, Slot.Of("repair", repair.Title),
                Slot.Of("check", check.Title))
            : null;
}
