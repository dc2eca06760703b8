using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Understanding;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Pictures;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Conversation.Speaking;

/// <summary>
/// Says what readings say: the verdict, what was expected, the odd one out, and what would settle a doubt.
/// </summary>
internal static class VerdictSpeech
{
    public static void Say(TurnDraft turn, CheckPage page, ImmutableArray<Reading> readings, Judgement judgement)
    {
        Provenance origin = new Provenance.Calculation(page.Calculation!, judgement.Source.ToString());
        Segment segment = turn.Speaker.Say(SegmentKind.Verdict, VerdictWord.Phrase(judgement.Verdict),
            Slot.Of("what", page.Title), Slot.Said("readings", List(readings)));
        turn.Say(segment with
        {
            From = segment.From.Add(origin),
            Verdict = Figures(turn, page, readings, judgement),
            Pictures = Drawn(turn, page, readings, judgement),
        });
        if (Made(readings, judgement) is { Length: > 0 } made)
            turn.Say(SegmentKind.Verdict, "verdict-figure", new Slot("figure", string.Join("; ", made), [origin]));
        if (judgement.PatternKey is { } pattern)
            turn.Say(SegmentKind.Verdict, $"pattern-{pattern}", new Slot("odd", judgement.OddOneOut ?? "", [origin]));
        else if (judgement.OddOneOut is { } odd)
            turn.Say(SegmentKind.Verdict, "verdict-odd", new Slot("odd", odd, [origin]));
        if (Expected(judgement) is { Length: > 0 } expected)
            turn.Say(SegmentKind.Verdict, "verdict-expected",
                new Slot("expected", string.Join("; ", expected), [origin]));
        if (judgement.ToSettleKey is { } key) turn.Say(SegmentKind.Notice, $"settle-{key}");
    }

    private static ImmutableArray<Picture>? Drawn(
        TurnDraft turn, CheckPage page, ImmutableArray<Reading> readings, Judgement judgement) =>
        turn.View.Series is { } series
            ? new SpokenPictures(turn.Speaker).Of(new VerdictFacts(page.Calculation!, page.Title.Text,
                new JudgeRequest(readings, turn.Library.JudgeInputsFor(page, series)), judgement))
            : null;

    private static VerdictFigures Figures(
        TurnDraft turn, CheckPage page, ImmutableArray<Reading> readings, Judgement judgement) => new(
        VerdictWord.Of(judgement.Verdict),
        Healthy(turn, page, judgement.Verdict),
        [.. readings.Select(reading => new ShownReading(
            reading.Label ?? "", ShownValue.Of(reading), reading.Label is { } label && label == judgement.OddOneOut))],
        Expected(judgement),
        DerivationText.Lines(judgement.Derivation),
        judgement.DecisionRule,
        judgement.Source.ToString());

    // Healthy is what the check shows when none of the faults it looks for is there.
    private static bool? Healthy(TurnDraft turn, CheckPage page, VerdictKind verdict)
    {
        Check check = turn.Library.Graph.Find(page.Id)!;
        int seen = page.Outcomes.ToList().FindIndex(outcome => outcome.Verdicts.Contains(verdict));
        return seen < 0 ? null : check.EveryOtherFault[seen] >= check.EveryOtherFault.Max();
    }

    private static ImmutableArray<string> Expected(Judgement judgement) =>
        [.. judgement.Expected.Select(BandText.Of).Where(text => text.Length > 0)];

    // What was made from the readings and is none of them, such as a superheat; past the end of a table it is only a
    // bound.
    private static ImmutableArray<string> Made(ImmutableArray<Reading> readings, Judgement judgement) =>
        judgement.ToSettleKey == ToSettle.OutsideTable ? [] : [.. from band in judgement.Expected
            where band.Name.Length > 0 && band.Found is not null && readings.All(reading => reading.Label != band.Name)
            select BandText.Found(band)];

    private static string List(ImmutableArray<Reading> readings) =>
        string.Join(", ", readings.Select(reading =>
            readings.Length == 1 ? ShownValue.Of(reading) : $"{reading.Label} {ShownValue.Of(reading)}"));
}
