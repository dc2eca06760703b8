using System.Collections.Immutable;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding.Answers;

/// <summary>
/// Takes whether the unit works after a repair; that proves the fault or rules it out, unless the work itself did not
/// hold.
/// </summary>
internal sealed class VerifyAnswer(CommandWords words) : Answer
{
    /// <summary>The key of "the work did not hold".</summary>
    public const string Redo = "redo";

    private const string NotCured = "words-not-cured", LeaksAgain = "words-leaks-again";

    public override QuestionKind Kind => QuestionKind.Verify;

    public override bool Choose(TurnDraft turn, OpenQuestion question, string key)
    {
        if (key is not ("yes" or "no" or Redo) || question.Options.All(option => option.Key != key)) return false;
        if (turn.Library.Graph.Find(new RepairId(question.Subject)) is not { } repair) return false;
        if (key == Redo)
        {
            turn.Happen(new RepairToRedo(question.Subject, repair.Access[0].Value));
            return true;
        }

        FaultPage fault = turn.Library.Faults[Likeliest(turn.View.Belief, repair)];
        RepairPage page = turn.Library.Repairs[repair.Id];
        CuredFaults cured =
            CuredFaults.Of(SideFindings.Without(turn.Library, turn.View, repair.Id), repair, turn.Library.Settings);
        ImmutableArray<FaultPage> others = [.. cured.NotToldApart.Select(ranked => turn.Library.Faults[ranked.Id])];
        ImmutableArray<FaultPage> left = key == "yes" && cured.IsGuess ? Left(turn, fault) : [];
        turn.Happen(new RepairVerified(question.Subject, fault.Id.Value, key == "yes")
        {
            OrFaults = [.. others.Select(other => other.Id.Value)],
            InQuestion = left.IsEmpty ? null : [.. left.Select(open => open.Id.Value)],
        });
        Slot repaired = Slot.Of("repair", page.Title);
        if (!left.IsEmpty)
            turn.Say(SegmentKind.Conclusion, "repair-worked-unproven", repaired,
                Slot.List("faults", [.. left.Select(open => open.Title)]));
        else if (key == "yes" && !others.IsEmpty)
            turn.Say(SegmentKind.Conclusion, "repair-worked-several", repaired,
                Slot.List("faults", [fault.Title, .. others.Select(other => other.Title)]));
        else
            turn.Say(key == "yes" ? SegmentKind.Conclusion : SegmentKind.Notice,
                key == "yes" ? "repair-worked" : Failed(turn, page), repaired, Slot.Of("fault", fault.Title));
        if (key == "no") Outdate(turn, page);
        return true;
    }

    // Who washed a filter that was full of dust is not told that it was clean.
    private static string Failed(TurnDraft turn, RepairPage page) =>
        page.MayNotHold ? "repair-failed-doubt" : turn.View.Role.Rank == 0 ? "repair-failed-owner" : "repair-failed";

    // A repair made on a guess, and the unit works: the trouble may have gone by itself, so the fault is not proven by
    // that.
    private static ImmutableArray<FaultPage> Left(TurnDraft turn, FaultPage fault) =>
        [.. EndOfWalk.SuspectsOf(turn).Take(turn.Library.Settings.Suspects).Append(fault).DistinctBy(page => page.Id)];

    // Superheat from before a charge was weighed in says nothing of the charge that is in now.
    internal static void Outdate(TurnDraft turn, RepairPage repair)
    {
        ImmutableArray<CheckPage> measured =
        [
            .. turn.State.Results.Select(result => turn.Library.Checks.GetValueOrDefault(new CheckId(result.Check)))
                .OfType<CheckPage>()
                .Where(check => repair.Changes.Contains(check.Id)),
        ];
        if (measured.IsEmpty) return;
        turn.Happen(new ResultsOutdated([.. measured.Select(check => check.Id.Value)]));
        turn.Say(SegmentKind.Notice, "results-outdated", Slot.Of("repair", repair.Title),
            Slot.List("checks", [.. measured.Select(check => check.Title)]));
    }

    public override bool Hear(TurnDraft turn, OpenQuestion question, string text) =>
        words.Means("words-yes", text) || words.Means("words-plain-yes", text) || IsCured(turn, text)
            ? Choose(turn, question, "yes")
        : words.Means("words-no", text) || words.Means("words-plain-no", text) || words.Means("words-soft-no", text)
            || IsNotCured(text) || BeginsWithNo(text) ? Choose(turn, question, "no")
        : words.Means("words-redo", text) ? Choose(turn, question, Redo)
        : words.Means(LeaksAgain, text) ? Choose(turn, question, MayNotHold(turn, question) ? Redo : "no")
        : IsOfOtherMode(turn, text) || base.Hear(turn, question, text);

    // "It cools now" where it dripped is neither cured nor a new trouble.
    private bool IsOfOtherMode(TurnDraft turn, string text)
    {
        if (!words.Means("words-cools-now", text) && !words.Means("words-heats-now", text)) return false;
        Misfit.Say(turn);
        return true;
    }

    // "It cools now" cures what did not cool, and not what did not heat.
    private bool IsCured(TurnDraft turn, string text) => words.Means("words-cured", text)
        || (words.Means("words-cools-now", text) && IsOf(turn, "cooling"))
        || (words.Means("words-heats-now", text) && IsOf(turn, "heating"));

    // All of the trouble is one of that mode by the pages of its symptoms: water that drips in cooling is none.
    private static bool IsOf(TurnDraft turn, string mode) =>
        !turn.State.Symptoms.IsEmpty
            && turn.State.Symptoms.All(symptom =>
                turn.Library.Symptoms.GetValueOrDefault(new SymptomId(symptom.Symptom))?.Mode == mode);

    // "Still the same", "still 0A"; "still works" and "still cooling 18" are other matters.
    private bool IsNotCured(string text) => words.Means(NotCured, text)
        || (words.After(NotCured, text) is { } rest && PlainWords.Of(rest) is [{ Length: 2 or 3 } code]
            && code.Any(char.IsDigit) && code.Any(char.IsLetter));

    // "No, it is back after two minutes"; "no, no code" and "no bubbles" say that all is well.
    private bool BeginsWithNo(string text) =>
        text.Split([',', '.', ';', '!'], 2) is [var first, var rest] && words.Means("words-plain-no", first)
        && words.After("words-plain-no", rest.Trim()) is null && rest.Trim().Length > 0;

    // A joint that leaks again is mended anew; water that runs on was not cured.
    private static bool MayNotHold(TurnDraft turn, OpenQuestion question) =>
        turn.Library.Repairs.GetValueOrDefault(new RepairId(question.Subject)) is { MayNotHold: true };

    internal static FaultId Likeliest(Belief belief, Repair repair) =>
        belief.Ranked.Select(ranked => ranked.Id).FirstOrDefault(repair.Fixes.Contains, repair.Fixes[0]);
}
