using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Conversation.Understanding;

/// <summary>
/// Corrections of an earlier reading by its name: "I misread the suction pressure, it was 118", "the suction was 118,
/// not 181".
/// </summary>
internal static class NamedReading
{
    private const string Misread = "words-misread", InsteadOf = "words-instead-of";

    private static readonly char[] Digits = [.. "0123456789"];

    private static readonly char[] Pauses = [' ', ',', '.', ';', ':', '!', '?', '-', '–', '—'];

    /// <summary>Takes the reading anew; everything after it is worked out again.</summary>
    /// <returns>
    /// False when the message names no reading that was given, gives no number for it, or does not say that the old one
    /// was wrong.
    /// </returns>
    public static bool Correct(TurnDraft turn, CommandWords words, string text)
    {
        // Half-way through the readings of another check the name may be one of those.
        if (turn.State is not { Given.IsEmpty: true, Unconfirmed.IsEmpty: true } || turn.View.Series is null)
            return false;
        bool isMisread = words.Holds(Misread, text);
        (string told, string? denied) = Parted(words, text);
        if (!isMisread && denied is null) return false;
        foreach (SeenResult result in turn.View.Results.Reverse())
        {
            if (!turn.Library.Checks.TryGetValue(new CheckId(result.Check), out CheckPage? page)) continue;
            foreach (GivenReading old in result.Readings.Where(old => Names(text, page, old)))
                if (Read(turn, page, old, told) is { } anew && !IsSame(anew, old)
                    && (isMisread || IsDenied(turn, page, old, denied!)))
                    return Take(turn, page, result, anew);
        }

        return false;
    }

    private static bool Take(TurnDraft turn, CheckPage page, SeenResult result, GivenReading anew)
    {
        turn.Say(SegmentKind.Understood, "notice-reading-corrected", Slot.Of("check", page.Title));
        // A way to an access state that is half gone is gone to its end.
        if (turn.State.Approach is null) turn.Happen(new CheckReopened(page.Id.Value));
        turn.Happen(
            new ReadingsGiven(page.Id.Value, [.. result.Readings.Select(old => old.Label == anew.Label ? anew : old)]));
        ReadingVerdict.GiveTold(turn, page);
        return true;
    }

    // By the label of its line, or by what people call the whole check where one line alone bears that name.
    private static bool Names(string text, CheckPage page, GivenReading old)
    {
        ImmutableArray<string> said = PlainWords.Of(text), label = PlainWords.Of(old.Label);
        return (!label.IsEmpty && label.All(said.Contains))
            || (page.Readings.Length == 1 && page.SaidAs.Append(page.Title).Select(name => PlainWords.Of(name.Text))
                .Any(name => !name.IsEmpty && name.All(said.Contains)));
    }

    // "118 not 181": what was meant, and what it was not.
    private static (string Told, string? Denied) Parted(CommandWords words, string text)
    {
        if (words.Find(InsteadOf, text) is not var (from, to)) return (text, null);
        string before = text[..from], after = text[to..].TrimStart(Pauses);
        if (!after.Any(char.IsAsciiDigit)) return (text, null);
        // "It was not 181 but 118", "not 181, 118": the number that stands last is meant.
        return before.Any(char.IsAsciiDigit) ? (before, after) : LastNumber(after) is var (denied, rest)
            ? ($"{before} {rest}", denied)
            : (text, null);
    }

    private static (string Denied, string After)? LastNumber(string after)
    {
        int end = after.IndexOfAny([',', ';', ' ']);
        return end > 0 && after[end..].Any(char.IsAsciiDigit) ? (after[..end], after[end..].TrimStart(Pauses)) : null;
    }

    private static GivenReading? Read(TurnDraft turn, CheckPage page, GivenReading old, string told)
    {
        if (page.Readings.FirstOrDefault(line => line.Label == old.Label) is not { } field) return null;
        Reading? only =
            ReadingParser.Parse(turn.Heard(told), ReadingIntake.Context(field, turn.View.Series?.Market)) switch
        {
            ReadingResult.Readings { List: [var read], Unclear: null } => InTheUnitOf(old, read, told),
            ReadingResult.AskBack asked =>
                asked.Meanings.SelectMany(meaning => meaning.Readings is [var read]
                    && read.Unit.Code == old.Unit ? [read] : Array.Empty<Reading>()).FirstOrDefault(),
            _ => null,
        };
        return only is not null && ReadingIntake.IsOfKind(only, field)
            ? new GivenReading(old.Label, ReadingStates.Name(only.State), only.Value, only.Unit.Code, only.Said) : null;
    }

    // A bare number is in the unit in which the reading was first given.
    private static Reading InTheUnitOf(GivenReading old, Reading read, string told) =>
        read.State == ReadingState.Number && Unit.TryParse(old.Unit, out Unit? unit)
            && !told[(told.LastIndexOfAny(Digits) + 1)..].Any(char.IsLetter)
            ? read with { Value = unit.ToSi(read.Unit.FromSi(read.Value)), Unit = unit } : read;

    private static bool IsDenied(TurnDraft turn, CheckPage page, GivenReading old, string denied) =>
        Read(turn, page, old, denied) is { } said && IsSame(said, old);

    private static bool IsSame(GivenReading one, GivenReading other) =>
        one.State == other.State
            && Math.Abs(one.Value - other.Value) <= 1e-6 * Math.Max(Math.Abs(one.Value), Math.Abs(other.Value));
}
