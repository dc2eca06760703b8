using System.Collections.Immutable;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Conversation.Understanding;

/// <summary>From a complete set of readings to a verdict, and from the verdict to evidence.</summary>
internal static class ReadingVerdict
{
    /// <summary>Judges the readings that are in; without a series nothing is expected, and nothing is said.</summary>
    public static void Give(TurnDraft turn, CheckPage page)
    {
        if (Takes(turn, page)) return;
        CheckQuestion.AskPlainly(turn, page);
    }

    /// <summary>
    /// The same for readings that were taken before: when they cannot be right, the check is left to its turn.
    /// </summary>
    public static void GiveTold(TurnDraft turn, CheckPage page) => Takes(turn, page);

    /// <summary>
    /// Gives the verdict where one of the readings that are in settles it, whatever the open ones are.
    /// </summary>
    /// <returns>False when the open readings matter.</returns>
    public static bool GivesAlready(TurnDraft turn, CheckPage page)
    {
        if (turn.View.Series is not { } series) return false;
        var inputs = turn.Library.JudgeInputsFor(page, series);
        foreach (Reading reading in page.Readings.Where(field => IsGiven(turn, field))
            .Select(field => Given(turn, field)))
        {
            int place = page.Readings.IndexOf(page.Readings.First(field => field.Label == reading.Label));
            if (JudgeCatalogue.All[page.Calculation!].JudgeAlone(place, reading, inputs) is not { } judgement) continue;
            See(turn, page, [reading], judgement);
            return true;
        }

        return false;
    }

    private static bool IsGiven(TurnDraft turn, ReadingField field) =>
        turn.State.Given.Any(known => known.Label == field.Label);

    // False when the readings cannot be right.
    private static bool Takes(TurnDraft turn, CheckPage page)
    {
        if (turn.View.Series is not { } series) return true;
        ImmutableArray<Reading> readings = [.. page.Readings.Select(field => Given(turn, field))];
        Judgement judgement = JudgeCatalogue.All[page.Calculation!].Judge(
            new JudgeRequest(readings, turn.Library.JudgeInputsFor(page, series)));
        return See(turn, page, readings, judgement);
    }

    private static bool See(TurnDraft turn, CheckPage page, ImmutableArray<Reading> readings, Judgement judgement)
    {
        VerdictSpeech.Say(turn, page, readings, judgement);
        if (judgement.Verdict == VerdictKind.Impossible)
        {
            if (WasImpossible(turn)) turn.Say(SegmentKind.Notice, "reading-impossible-again");
            turn.Happen(new CheckReopened(page.Id.Value));
            return false;
        }

        double trusted = turn.IsDoubted ? turn.Library.Settings.DoubtTrusted : 1;
        if (turn.IsDoubted) turn.Say(SegmentKind.Notice, "notice-reading-doubted");
        AnswerOption? outcome = page.Outcomes.FirstOrDefault(option => option.Verdicts.Contains(judgement.Verdict));
        turn.Happen(new OutcomeSeen(
            page.Id.Value, outcome?.Id.Value, Trusted(Weigh(page, judgement, turn.Library.Settings.Misread), trusted),
            VerdictWord.Of(judgement.Verdict),
            string.Join(", ", readings.Select(reading => $"{reading.Label} {ShownValue.Of(reading)}")))
        {
            Leaves = StateLeft.By(turn, page),
        });
        return true;
    }

    // Measured again, and still it cannot be: the way past it is said.
    private static bool WasImpossible(TurnDraft turn) =>
        turn.State.LastReply?.Segments.Any(said =>
            said.From.Contains(new Provenance.Phrase(VerdictWord.Phrase(VerdictKind.Impossible)))) == true;

    private static Reading Given(TurnDraft turn, ReadingField field)
    {
        GivenReading given = turn.State.Given.First(known => known.Label == field.Label);
        return new Reading(given.Label, ReadingStates.Of(given.State), given.Value,
            Unit.TryParse(given.Unit, out Unit? unit) ? unit : field.Unit, given.Words);
    }

    // For the rest it says nothing, as much for any outcome.
    private static ImmutableArray<double> Trusted(ImmutableArray<double> weights, double trusted) =>
        trusted >= 1 ? weights : [.. weights.Select(weight => trusted * weight + (1 - trusted) / weights.Length)];

    // Each outcome weighs what the verdicts that mean it are likely; no one reading is beyond doubt.
    private static ImmutableArray<double> Weigh(CheckPage page, Judgement judgement, double misread) =>
        [.. page.Outcomes.Select(outcome => misread + (1 - misread)
            * outcome.Verdicts.Sum(verdict => judgement.Probabilities.GetValueOrDefault(verdict)))];
}
