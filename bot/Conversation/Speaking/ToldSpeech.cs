using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Told;
using DxAssistant.Conversation.Understanding;
using DxAssistant.Conversation.Understanding.Whole;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Speaking;

/// <summary>Says back the things of a whole message.</summary>
internal static class ToldSpeech
{
    /// <summary>One thing, as part of a list.</summary>
    /// <returns>Null when the content no longer holds it, or it is nothing for this series.</returns>
    public static Segment? Of(TurnDraft turn, SeriesPage? series, ToldThing thing) => thing switch
    {
        ToldThing.Unit unit => turn.Library.Series.TryGetValue(unit.Series, out var page)
            ? Say(turn, "told-unit", Slot.Of("series", page.Title)) : null,
        ToldThing.AtUnit person => turn.Library.Roles.FirstOrDefault(page => page.Role.Id == person.Role) is { } role
            ? Say(turn, "told-person", Slot.Of("role", role.Name)) : null,
        ToldThing.Mode mode => Say(turn, ModeWords.Phrase(mode.Running)),
        ToldThing.Code code => OfCode(turn, series, code),
        ToldThing.Symptom symptom => turn.Library.Symptoms.TryGetValue(new SymptomId(symptom.Id), out var page)
            ? Say(turn, SymptomPhrase(symptom), Slot.Of("symptom", page.Title)) : null,
        ToldThing.Outcome outcome =>
            Page(turn, series, outcome.Check)?.Outcomes.FirstOrDefault(
                option => option.Id.Value == outcome.Seen) is { } answer
            ? Say(turn, outcome.Doubtful ? "told-outcome-doubt" : "told-outcome",
                Slot.Of("check", turn.Library.Checks[new CheckId(outcome.Check)].Title),
                Slot.Of("answer", answer.Answer)) : null,
        ToldThing.Measured measured => Page(turn, series, measured.Check) is { } check
            ? Say(turn, measured.Doubtful ? "told-measured-doubt" : "told-measured", Slot.Of("check", check.Title),
                Slot.Said("readings", List(measured))) : null,
        ToldThing.Tried tried => turn.Library.Repairs.TryGetValue(new RepairId(tried.Repair), out var repair)
            ? Say(turn, "told-tried", Slot.Of("repair", repair.Title)) : null,
        _ => null,
    };

    /// <summary>Several things in one slot.</summary>
    public static Slot List(string name, ImmutableArray<Segment> things) => new(
        name, string.Join("; ", things.Select(thing => thing.Text)),
        [.. things.SelectMany(thing => thing.From).Distinct()]);

    private static Segment Say(TurnDraft turn, string phrase, params ReadOnlySpan<Slot> slots) =>
        turn.Speaker.Say(SegmentKind.Understood, phrase, slots);

    private static string SymptomPhrase(ToldThing.Symptom symptom) =>
        (symptom.Confidence < 1, symptom.ComesAndGoes) switch
    {
        (true, _) => "told-symptom-doubt",
        (_, true) => "told-symptom-sometimes",
        _ => "told-symptom",
    };

    private static Segment OfCode(TurnDraft turn, SeriesPage? series, ToldThing.Code code)
    {
        string shown = $"{code.Shown} {code.Look}".TrimEnd();
        return series is not null && CodeLookUp.Only(series, code.Shown, code.Look) is { } known
            ? Say(turn, "told-code", Slot.Said("code", $"{known.Display} {known.Look}"),
                Slot.Of("meaning", known.Means))
            : Say(turn, "told-display", Slot.Said("code", shown));
    }

    private static CheckPage? Page(TurnDraft turn, SeriesPage? series, string check) =>
        turn.Library.Checks.GetValueOrDefault(new CheckId(check)) is { } page
        && (series is null || page.Series.IsEmpty || page.Series.Contains(series.Id)) ? page : null;

    private static string List(ToldThing.Measured measured) => string.Join(", ", measured.Readings.Select(given =>
        measured.Readings.Length == 1 ? ShownValue.Of(given) : $"{given.Label} {ShownValue.Of(given)}"));
}
