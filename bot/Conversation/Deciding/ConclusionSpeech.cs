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
    /// <summary>The probability from which a fault counts as found rather than likely; common practice, no source.</summary>
    public const double Found = 0.95;

    // Natural logarithm of the odds that a result must move to be worth a line: a factor of one and a half.
    private const double Telling = 0.4;

    /// <param name="notDone">The checks that would prove the fault and were not done.</param>
    public static void Say(TurnDraft turn, Repair repair, ImmutableArray<CheckId> notDone)
    {
        Belief belief = turn.View.Belief;
        RankedFault? likeliest = belief.Ranked.FirstOrDefault(ranked => repair.Fixes.Contains(ranked.Id));
        if (likeliest is null) return;
        double cured = belief.Ranked.Where(ranked => repair.Fixes.Contains(ranked.Id)).Sum(ranked => ranked.Probability);
        FaultPage page = turn.Library.Faults[likeliest.Id];
        Segment conclusion = turn.Speaker.Say(SegmentKind.Conclusion, Phrase(cured, notDone),
            Slot.Of("fault", page.Title), Slot.Figure("percent", Percent(cured)),
            Slot.List("checks", [.. notDone.Select(check => turn.Library.Checks[check].Title)]));
        turn.Say(conclusion with { Pictures = Drawn(turn, belief, page) });
        turn.Say(SegmentKind.Conclusion, "conclusion-proof", Slot.Of("proof", page.Proof));
        SayLedger(turn, belief, likeliest.Id);
        turn.Quote(SegmentKind.Notice, page.Beware.Where(line => !IsCaution(turn, line)));
    }

    private static string Phrase(double cured, ImmutableArray<CheckId> notDone) =>
        !notDone.IsEmpty ? "conclusion-unproven" : cured >= Found ? "conclusion-proven" : "conclusion-likely";

    /// <summary>A probability as it is said: never 100, since no reading proves that much, and never 0.</summary>
    public static double Percent(double probability) => Math.Clamp(Math.Round(probability * 100), 1, 99);

    // A bare link to a caution: the repair says that caution itself.
    private static bool IsCaution(TurnDraft turn, Passage line) =>
        turn.Library.Cautions.Values.Any(caution => caution.Title.Text == line.Text);

    private static ImmutableArray<Picture>? Drawn(TurnDraft turn, Belief belief, FaultPage page)
    {
        Picture?[] pictures = [LedgerDrawn(turn, belief, page), BeliefStory.Of(turn.Library, turn.State)];
        return pictures.Any(picture => picture is not null) ? [.. pictures.OfType<Picture>()] : null;
    }

    private static Picture? LedgerDrawn(TurnDraft turn, Belief belief, FaultPage page)
    {
        ImmutableArray<LedgerEntry> entries = [.. belief.Ledger
            .Where(line => line.Evidence is Evidence.OutcomeSeen)
            .Select(line => new LedgerEntry(turn.View.Learnt([line.Evidence]), MovedBy(line, belief, page.Id)))
            .Where(entry => Math.Abs(entry.LogOdds) >= Telling)];
        return LedgerPicture.Of(page.Title.Text, entries, new SpokenPictures(turn.Speaker)) is { } drawn
            ? SpokenPictures.Shown(drawn, new Provenance.Calculation("belief", turn.Library.Version))
            : null;
    }

    private static void SayLedger(TurnDraft turn, Belief belief, FaultId fault)
    {
        foreach (LedgerLine line in belief.Ledger)
            if (line.Evidence is Evidence.OutcomeSeen seen && Moved(line, belief, fault) is { } phrase)
                SayLine(turn, seen, phrase);
    }

    private static void SayLine(TurnDraft turn, Evidence.OutcomeSeen seen, string phrase)
    {
        SeenResult result = turn.State.Results.First(known => known.Check == seen.Check.Value);
        CheckPage check = turn.Library.Checks[seen.Check];
        turn.Say(SegmentKind.Why, phrase, Slot.Of("check", check.Title), Slot.Said("answer", result.Words));
    }

    private static string? Moved(LedgerLine line, Belief belief, FaultId fault) =>
        MovedBy(line, belief, fault) switch
        {
            >= Telling => "conclusion-for",
            <= -Telling => "conclusion-against",
            _ => null,
        };

    // Against the mean of the other candidates, by what was likely after all evidence.
    private static double MovedBy(LedgerLine line, Belief belief, FaultId fault)
    {
        double others = 0, weight = 0;
        foreach (RankedFault ranked in belief.Ranked.Where(ranked => ranked.Id != fault))
        {
            others += Math.Max(line.LogLikelihood[ranked.Id], -10);
            weight += 1;
        }

        return weight == 0 ? 0 : line.LogLikelihood[fault] - others / weight;
    }
}
