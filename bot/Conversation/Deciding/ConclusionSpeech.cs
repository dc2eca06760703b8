using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.State;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>Says which fault was found, how sure that is, what speaks for and against it, and what proves it.</summary>
internal static class ConclusionSpeech
{
    /// <summary>The probability from which a fault counts as found rather than likely; common practice, no source.</summary>
    public const double Found = 0.95;

    // Natural logarithm of the odds that a result must move to be worth a line: a factor of one and a half.
    private const double Telling = 0.4;

    public static void Say(TurnDraft turn, Repair repair)
    {
        Belief belief = turn.View.Belief;
        RankedFault? likeliest = belief.Ranked.FirstOrDefault(ranked => repair.Fixes.Contains(ranked.Id));
        if (likeliest is null) return;
        double cured = belief.Ranked.Where(ranked => repair.Fixes.Contains(ranked.Id)).Sum(ranked => ranked.Probability);
        FaultPage page = turn.Library.Faults[likeliest.Id];
        turn.Say(SegmentKind.Conclusion, cured >= Found ? "conclusion-proven" : "conclusion-likely",
            Slot.Of("fault", page.Title), Slot.Figure("percent", Percent(cured)));
        turn.Say(SegmentKind.Conclusion, "conclusion-proof", Slot.Of("proof", page.Proof));
        SayLedger(turn, belief, likeliest.Id);
        turn.Quote(SegmentKind.Notice, page.Beware.Where(line => !IsCaution(turn, line)));
    }

    /// <summary>A probability as it is said: never 100, since no reading proves that much, and never 0.</summary>
    public static double Percent(double probability) => Math.Clamp(Math.Round(probability * 100), 1, 99);

    // A bare link to a caution: the repair says that caution itself.
    private static bool IsCaution(TurnDraft turn, Passage line) =>
        turn.Library.Cautions.Values.Any(caution => caution.Title.Text == line.Text);

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

    // Against the mean of the other candidates, by what was likely after all evidence.
    private static string? Moved(LedgerLine line, Belief belief, FaultId fault)
    {
        double others = 0, weight = 0;
        foreach (RankedFault ranked in belief.Ranked.Where(ranked => ranked.Id != fault))
        {
            others += Math.Max(line.LogLikelihood[ranked.Id], -10);
            weight += 1;
        }

        double moved = weight == 0 ? 0 : line.LogLikelihood[fault] - others / weight;
        return moved >= Telling ? "conclusion-for" : moved <= -Telling ? "conclusion-against" : null;
    }
}
