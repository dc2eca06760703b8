using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.State;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Pictures;

namespace DxAssistant.Conversation.Deciding;

/// <summary>Says which fault was found, how sure that is, what speaks for and against it, and what proves it.</summary>
internal static class ConclusionSpeech
{
    /// <param name="notDone">The checks that would prove the fault and were not done.</param>
    /// <param name="inShort">Without what proves it and what speaks for it: both were said.</param>
    public static void Say(TurnDraft turn, Repair repair, ImmutableArray<CheckId> notDone, bool inShort)
    {
        Belief belief = turn.View.Belief;
        CuredFaults cured = CuredFaults.Of(belief, repair, turn.Library.Settings);
        if (cured.All.IsEmpty) return;
        FaultPage page = turn.Library.Faults[cured.Likeliest.Id];
        if (!inShort) SayBeside(turn, repair);
        if (turn.View.Role.Rank == 0)
        {
            SayToOwner(turn, cured, page, notDone);
            return;
        }

        Segment conclusion = Conclusion(turn, cured, page, Checks(turn, notDone));
        var ledger = new FaultLedger(turn, page.Id);
        turn.Say(inShort ? conclusion : conclusion with { Pictures = Drawn(turn, ledger), Ledger = ledger.Figures() });
        if (!inShort) SayGrounds(turn, cured, page, notDone, ledger);
        turn.Quote(SegmentKind.Notice, page.Beware.Where(line => !IsCaution(turn, line)));
    }

    // A second trouble that was seen as well speaks against this one in the figures, and is mended after it all the
    // same.
    private static void SayBeside(TurnDraft turn, Repair repair)
    {
        foreach ((SeenResult result, CheckPage check) in SideFindings.Beside(turn.Library, turn.View, repair.Id))
            turn.Say(SegmentKind.Notice, "conclusion-beside", Slot.Of("check", check.Title),
                Slot.Said("answer", result.Words));
    }

    // An owner is told what it is, and hears figures and grounds when asking why.
    private static void SayToOwner(TurnDraft turn, CuredFaults cured, FaultPage page, ImmutableArray<CheckId> notDone)
    {
        string phrase = !cured.IsLikely ? "conclusion-owner-try" : cured.IsFound && notDone.IsEmpty
            ? "conclusion-owner-found"
            : "conclusion-owner-likely";
        turn.Say(SegmentKind.Conclusion, phrase, Slot.Of("fault", page.Title));
        turn.Quote(SegmentKind.Notice, page.Beware.Where(line => !IsCaution(turn, line)));
    }

    private static void SayGrounds(TurnDraft turn, CuredFaults cured, FaultPage page, ImmutableArray<CheckId> notDone,
        FaultLedger ledger)
    {
        SayDoubts(turn, cured, notDone);
        turn.Say(SegmentKind.Conclusion, "conclusion-proof", Slot.Of("proof", page.Proof));
        ledger.Say();
    }

    private static Segment Conclusion(TurnDraft turn, CuredFaults cured, FaultPage page, Slot checks)
    {
        Slot fault = Slot.Of("fault", page.Title), percent =
            Slot.Figure("percent", Percent(cured.Likeliest.Probability));
        if (checks.Text.Length > 0 && cured.IsLikely)
            return turn.Speaker.Say(SegmentKind.Conclusion, "conclusion-unproven", fault, percent, checks);
        if (checks.Text.Length == 0 && cured.IsRepairAloneSure)
            return turn.Speaker.Say(SegmentKind.Conclusion, "conclusion-repair-sure",
                Slot.Figure("percent", Percent(cured.Share)), Shares(turn, [cured.Likeliest, .. cured.Others]));
        if (!cured.IsLikely)
            return turn.Speaker.Say(SegmentKind.Conclusion, "conclusion-try",
                Shares(turn, [cured.Likeliest, .. cured.Others]));
        return turn.Speaker.Say(SegmentKind.Conclusion, cured.IsFound ? "conclusion-proven" : "conclusion-likely",
            fault, percent);
    }

    // What the conclusion itself leaves unsaid.
    private static void SayDoubts(TurnDraft turn, CuredFaults cured, ImmutableArray<CheckId> notDone)
    {
        bool isTry = !cured.IsLikely && (!notDone.IsEmpty || !cured.IsRepairAloneSure);
        if (isTry && cured.NoneLeads)
            turn.Say(SegmentKind.Conclusion, "conclusion-none-leads",
                Slot.Figure("percent", Percent(cured.NoneOfThese)));
        if (isTry && !notDone.IsEmpty) turn.Say(SegmentKind.Conclusion, "conclusion-not-proven", Checks(turn, notDone));
        if (cured.IsLikely && !cured.Others.IsEmpty && (!notDone.IsEmpty || !cured.IsRepairAloneSure))
            turn.Say(SegmentKind.Conclusion, "conclusion-same-repair", Shares(turn, cured.Others));
    }

    private static Slot Checks(TurnDraft turn, ImmutableArray<CheckId> notDone) =>
        Slot.List("checks", [.. notDone.Select(check => turn.Library.Checks[check].Title)]);

    // Each fault with its own probability.
    private static Slot Shares(TurnDraft turn, ImmutableArray<RankedFault> faults)
    {
        ImmutableArray<Slot> titles =
            [.. faults.Select(ranked => Slot.Of("fault", turn.Library.Faults[ranked.Id].Title))];
        IEnumerable<string> shares = faults.Zip(titles, (ranked, title) =>
            turn.Speaker.Text("conclusion-share", title, Slot.Figure("percent", Percent(ranked.Probability))));
        return new Slot("shares", string.Join(", ", shares),
            [new Provenance.Phrase("conclusion-share"), .. titles.SelectMany(title => title.From).Distinct()]);
    }

    /// <summary>A probability as it is said: never 100, since no reading proves that much, and never 0.</summary>
    public static double Percent(double probability) => Math.Clamp(Math.Round(probability * 100), 1, 99);

    // A bare link to a caution: the repair says that caution itself.
    private static bool IsCaution(TurnDraft turn, Passage line) =>
        turn.Library.Cautions.Values.Any(caution => caution.Title.Text == line.Text);

    private static ImmutableArray<Picture>? Drawn(TurnDraft turn, FaultLedger ledger)
    {
        Picture?[] pictures = [ledger.Drawn(), BeliefStory.Of(turn.Library, turn.State)];
        return pictures.Any(picture => picture is not null) ? [.. pictures.OfType<Picture>()] : null;
    }
}
