using System.Collections.Immutable;
using System.Text.RegularExpressions;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Conversation.Understanding;

/// <summary>From typed readings to readings in the log; what is not clear is asked, never guessed.</summary>
internal static class ReadingIntake
{
    private static readonly Regex BareNumber = new(@"^\s*[-−]?\d+([.,]\d+)?\s*$", RegexOptions.CultureInvariant);

    /// <summary>Takes the readings of a message.</summary>
    /// <returns>False when there is no reading in it.</returns>
    public static bool Hear(TurnDraft turn, CheckPage page, string text)
    {
        ReadingResult parsed = OfTheLast(turn, page, text)
            ?? ReadingParser.Parse(turn.Heard(text), Context(turn, page));
        switch (Settled(turn, page, parsed))
        {
            case ReadingResult.Readings readings:
                Take(turn, page, readings.List, readings.Unclear);
                return true;
            case ReadingResult.AskBack asked:
                AskWhich(turn, page, asked);
                return true;
            default:
                return false;
        }
    }

    /// <summary>What was read, asked back where its scale is not said and matters.</summary>
    public static ReadingResult Settled(TurnDraft turn, CheckPage page, ReadingResult parsed) =>
        BareVoltage.Settle(BareVoltage.NominalOf(turn, page), BareTemperature.Settle(page, parsed));

    // A bare number is the one reading that is still asked for: "20k", then "68".
    private static ReadingResult.Readings? OfTheLast(TurnDraft turn, CheckPage page, string text)
    {
        if (turn.State.Given.IsEmpty || !BareNumber.IsMatch(text)) return null;
        ReadingField[] open =
            [.. page.Readings.Where(field => turn.State.Given.All(known => known.Label != field.Label))];
        return open is [var only]
            && ReadingParser.Parse(turn.Heard(text),
                Context(turn, only)) is ReadingResult.Readings { List: [var reading], Unclear: null } read
            ? read with { List = [reading with { Label = only.Label }] } : null;
    }

    /// <summary>Takes a filled-in form, field by field; empty fields stay open.</summary>
    public static void Fill(TurnDraft turn, CheckPage page, ImmutableArray<FilledField> fields)
    {
        var taken = ImmutableArray.CreateBuilder<Reading>();
        ReadingResult.AskBack? unclear = null;
        foreach (FilledField filled in fields.Where(filled => !string.IsNullOrWhiteSpace(filled.Words)))
            if (page.Readings.FirstOrDefault(field => field.Label == filled.Label) is { } field)
                unclear ??= TakeField(turn, field, filled.Words, taken);
        Take(turn, page, taken.ToImmutable(), unclear);
    }

    /// <summary>Takes readings whose meaning is settled.</summary>
    /// <param name="unclear">What else was in the message and must be asked about.</param>
    public static void Take(
        TurnDraft turn, CheckPage page, ImmutableArray<Reading> readings, ReadingResult.AskBack? unclear = null)
    {
        if (IsTwiceDifferently(readings))
        {
            turn.Say(SegmentKind.Notice, $"reading-{ReadingReason.WhichOne}");
            CheckQuestion.AskPlainly(turn, page);
            return;
        }

        ImmutableArray<GivenReading> given = Place(page, readings);
        if (!given.IsEmpty) turn.Happen(new ReadingsGiven(page.Id.Value, given));
        int placed = readings.Where((reading, place) => FieldOf(page, reading, place, readings.Length) is not null)
            .Count();
        if (given.Length < placed) turn.Say(SegmentKind.Notice, $"reading-{ReadingReason.Impossible}");
        if (placed < readings.Length)
            turn.Say(SegmentKind.Notice, "notice-reading-unplaced", Slot.Said("readings", Unplaced(page, readings)));
        if (unclear is not null)
        {
            AskWhich(turn, page, unclear);
            return;
        }

        ImmutableArray<string> open = Open(turn, page);
        if (!open.IsEmpty && ReadingVerdict.GivesAlready(turn, page)) return;
        if (open.IsEmpty) ReadingVerdict.Give(turn, page);
        else AskRest(turn, page, open);
    }

    /// <summary>
    /// The readings that have a place on a check's form and that can be at all: what cannot is no evidence.
    /// </summary>
    public static ImmutableArray<GivenReading> Place(CheckPage page, ImmutableArray<Reading> readings) =>
    [
        .. readings.Select((reading, place) => (reading, field: FieldOf(page, reading, place, readings.Length)))
            .Where(pair => pair.field is not null && IsPossible(pair.reading, pair.field))
            .Select(pair => Logged(pair.reading, pair.field!)),
    ];

    // Of another kind, it is for the judge of the check to refuse.
    private static bool IsPossible(Reading reading, ReadingField field) =>
        reading.State != ReadingState.Number || reading.Unit.Kind != field.Unit.Kind
        || new PossibleRange(field.Lowest, field.Highest).Holds(reading.Value);

    private static string Unplaced(CheckPage page, ImmutableArray<Reading> readings) => string.Join(", ", readings
        .Where((reading, place) => FieldOf(page, reading, place, readings.Length) is null)
        .Select(Named));

    private static bool IsTwiceDifferently(ImmutableArray<Reading> readings) => readings
        .Where(reading => reading.Label is not null)
        .GroupBy(reading => reading.Label, StringComparer.Ordinal)
        .Any(same => same.Select(reading => (reading.State, reading.Value)).Distinct().Count() > 1);

    private static ReadingResult.AskBack? TakeField(
        TurnDraft turn, ReadingField field, string words, ImmutableArray<Reading>.Builder taken)
    {
        switch (ReadingParser.Parse(turn.Heard(words), Context(turn, field)))
        {
            case ReadingResult.Readings { List: [var only], Unclear: null }:
                taken.Add(only with { Label = field.Label });
                return null;
            case ReadingResult.AskBack unclear:
                return unclear
                    with { Meanings = [.. unclear.Meanings.Select(meaning => Labelled(meaning, field.Label))] };
            default:
                turn.Say(SegmentKind.Notice, "notice-reading-not-understood",
                    Slot.Of("quantity", field.Label, field.Where.Place),
                    Slot.Of("unit", field.Unit.Symbol, field.Where.Place));
                return null;
        }
    }

    private static Meaning Labelled(Meaning meaning, string label) =>
        new([.. meaning.Readings.Select(reading => reading with { Label = label })]);

    private static void AskWhich(TurnDraft turn, CheckPage page, ReadingResult.AskBack unclear)
    {
        turn.Say(SegmentKind.Notice, $"reading-{unclear.Reason}");
        ImmutableArray<Meaning> offered =
            [.. unclear.Meanings.Select(meaning => OnForm(page, meaning)).Where(meaning => !meaning.Readings.IsEmpty)];
        NameUnplaced(turn, page, [.. unclear.Meanings.SelectMany(meaning => meaning.Readings)]);
        if (offered.IsEmpty)
        {
            if (page.Readings.Length > 1 && !unclear.Meanings.IsEmpty) AskRest(turn, page, Open(turn, page));
            else turn.AskAgain(turn.State.Question! with { Fields = CheckQuestion.Fields(turn, page) });
        }
        else
            turn.Ask(QuestionKind.Meaning, page.Id.Value, "ask-meaning",
                [.. offered.DistinctBy(MeaningKey.Show)
                        .Select(meaning => new Option(MeaningKey.Write(meaning), MeaningKey.Show(meaning))),
                    turn.Option(MeaningKey.None, "option-none-of-these")]);
    }

    // Only what has a place on the form is offered: a tap must not end in "I cannot place that".
    private static Meaning OnForm(CheckPage page, Meaning meaning) => new(
    [
        .. meaning.Readings.Select((reading, place) =>
            (reading, field: FieldOf(page, reading, place, meaning.Readings.Length)))
            .Where(pair => pair.field is not null && IsOfKind(pair.reading, pair.field))
            .Select(pair => page.Readings.Length == 1 ? pair.reading with { Label = null } : pair.reading
                with { Label = pair.field!.Label }),
    ]);

    /// <summary>Whether a reading may stand in a field: "split 75F" is a difference, and no temperature.</summary>
    public static bool IsOfKind(Reading reading, ReadingField field) =>
        reading.State != ReadingState.Number || reading.Unit.Kind == field.Unit.Kind
        || (IsPressure(reading.Unit.Kind) && IsPressure(field.Unit.Kind));

    private static bool IsPressure(QuantityKind kind) =>
        kind is QuantityKind.Pressure or QuantityKind.GaugePressure or QuantityKind.AbsolutePressure;

    // What was labelled and belongs elsewhere.
    private static void NameUnplaced(TurnDraft turn, CheckPage page, ImmutableArray<Reading> readings)
    {
        ImmutableArray<Reading> elsewhere =
            [.. readings.Where(reading => reading.Label is not null && FieldOf(page, reading, 0, 0) is null)];
        if (!elsewhere.IsEmpty)
            turn.Say(SegmentKind.Notice, "notice-reading-unplaced",
                Slot.Said("readings", string.Join(", ", elsewhere.Select(reading => reading.Said).Distinct())));
    }

    private static string Named(Reading reading) => $"{reading.Label} {ShownValue.Of(reading)}".TrimStart();

    private static void AskRest(TurnDraft turn, CheckPage page, ImmutableArray<string> open)
    {
        turn.Say(SegmentKind.Notice, "notice-give-readings",
            Slot.Of("fields", string.Join(", ", open), page.Readings[0].Where.Place));
        CheckQuestion.AskPlainly(turn, page);
    }

    private static ImmutableArray<string> Open(TurnDraft turn, CheckPage page) =>
        [.. page.Readings.Where(field => turn.State.Given.All(known => known.Label != field.Label))
            .Select(field => field.Label)];

    private static ReadingContext Context(TurnDraft turn, CheckPage page) => Context(page, turn.View.Series?.Market);

    /// <summary>What a check's form asks for.</summary>
    public static ReadingContext Context(CheckPage page, Market? market) =>
        ReadingContext.ForForm(page.Readings.Select(Line), market);

    /// <summary>What one line of a form asks for.</summary>
    public static ReadingContext Context(ReadingField field, Market? market) =>
        ReadingContext.ForForm([Line(field)], market);

    private static ReadingContext Context(TurnDraft turn, ReadingField field) =>
        Context(field, turn.View.Series?.Market);

    private static AskedField Line(ReadingField field) =>
        new(field.Label, field.Unit, new PossibleRange(field.Lowest, field.Highest));

    // By its label; without one, by its place when the message gave them all.
    private static ReadingField? FieldOf(CheckPage page, Reading reading, int place, int count) =>
        reading.Label is { } label
            ? page.Readings.FirstOrDefault(field => LabelNames.Agree(field.Label, label))
                ?? (page.Readings is [var only] && SupplyTerminals.AreOf(page, only, label) ? only : null)
            : count == page.Readings.Length ? page.Readings[place] : null;

    private static GivenReading Logged(Reading reading, ReadingField field) => new(
        field.Label, ReadingStates.Name(reading.State), reading.Value, reading.Unit.Code, reading.Said);
}
