using System.Collections.Immutable;
using DxAssistant.Conversation.Told;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Conversation.Understanding.Whole;

/// <summary>
/// Readings that were taken before: the pieces of a message that name what was measured and give all of it.
/// </summary>
internal static class MeasuredPieces
{
    private static readonly char[] Digits = [.. "0123456789"];

    /// <summary>Takes the readings that begin with a piece.</summary>
    /// <param name="used">The places of later pieces that were taken with earlier ones.</param>
    /// <returns>How many pieces they fill; 0 when they are none.</returns>
    public static int Take(
        TurnDraft turn, Wordings wordings, WordLists lists, SeriesPage? series, ImmutableArray<string> pieces, int at,
        HashSet<int> used, Findings found)
    {
        ImmutableArray<CheckId> named = Named(lists.Read(pieces[at]), lists, wordings);
        if (named.IsEmpty || !HasFigure(turn, pieces[at])) return 0;
        int count = 1;
        while (at + count < pieces.Length && IsFigures(turn, pieces[at + count], named, lists, wordings)) count++;
        string text = string.Join(", ", pieces.Skip(at).Take(count));
        ImmutableArray<ToldThing.Measured> complete = Complete(turn, named, series, text, lists, wordings);
        if (complete.IsEmpty
            && Apart(turn, named, series, text, pieces, at + count, lists, wordings) is [var (place, measured)])
        {
            used.Add(place);
            found.Add(measured, $"{text}, {pieces[place]}");
            return count;
        }

        if (complete is [var only]) found.Add(only, text);
        else found.UnclearReadings(text);
        return count;
    }

    private static ImmutableArray<ToldThing.Measured> Complete(
        TurnDraft turn, ImmutableArray<CheckId> named, SeriesPage? series, string text, WordLists lists,
        Wordings wordings) =>
    [
        .. named.Select(check => turn.Library.Checks[check])
            .Where(page => series is null || page.Series.IsEmpty || page.Series.Contains(series.Id))
            .Select(page => Complete(turn, page, series, text)
                ?? Complete(turn, page, series, WithoutName(page, text, lists, wordings)))
            .OfType<ToldThing.Measured>(),
    ];

    // "High side 520 psig, suction 130 psig, 95F outside": what belongs together stands apart.
    private static ImmutableArray<(int Place, ToldThing.Measured Measured)> Apart(TurnDraft turn,
        ImmutableArray<CheckId> named, SeriesPage? series,
        string text, ImmutableArray<string> pieces, int first, WordLists lists, Wordings wordings) =>
    [
        .. (from place in Enumerable.Range(first, pieces.Length - first)
           where HasFigure(turn, pieces[place]) && Named(lists.Read(pieces[place]), lists, wordings).IsEmpty
           from measured in Complete(turn, named, series, $"{text}, {pieces[place]}", lists, wordings)
           select (place, measured)),
    ];

    // "compressor windings 1.1, 1.1, 1.12": the name before the figures is no label of one of them.
    private static string WithoutName(CheckPage page, string text, WordLists lists, Wordings wordings)
    {
        int figure = text.AsSpan().IndexOfAnyInRange('0', '9');
        if (figure <= 0) return text;
        ImmutableArray<string> name = lists.Read(text[..figure]);
        bool isName = wordings.FindMeasured(name.AsSpan()).Contains(page.Id)
            || wordings.FindMeasured(name.Add(lists.Pressure).AsSpan()).Contains(page.Id);
        return isName ? text[figure..] : text;
    }

    private static ToldThing.Measured? Complete(TurnDraft turn, CheckPage page, SeriesPage? series, string text) =>
        BareTemperature.Settle(page, ReadingParser.Parse(turn.Heard(text), ReadingIntake.Context(page, series?.Market)))
            is ReadingResult.Readings { Unclear: null } readings
        && ReadingIntake.Place(page, readings.List) is { Length: var placed } given && placed == readings.List.Length
        && readings.List.All(reading => page.Readings.Any(field => ReadingIntake.IsOfKind(reading, field)))
        && page.Readings.All(field => given.Count(reading => reading.Label == field.Label) == 1)
            ? new ToldThing.Measured(page.Id.Value, given)
            : null;

    // By its words; "head 42 bar" by those of a head pressure.
    private static ImmutableArray<CheckId> Named(ImmutableArray<string> words, WordLists lists, Wordings wordings) =>
        Longest(words, wordings) is { IsEmpty: false } named ? named : Longest(WithPressure(words, lists), wordings);

    // Figures left out, and a unit of pressure read as the word it stands for.
    private static ImmutableArray<string> WithPressure(ImmutableArray<string> words, WordLists lists) =>
    [
        .. words.Select(word => word.TrimStart(Digits)).Where(word => word.Length > 0)
            .Select(word => SaidUnits.IsOfPressure(word) ? lists.Pressure : word),
    ];

    // The longest name in the words; none when two different things are named.
    private static ImmutableArray<CheckId> Longest(ImmutableArray<string> words, Wordings wordings)
    {
        for (int length = Math.Min(wordings.Longest, words.Length); length > 0; length--)
        {
            ImmutableArray<ImmutableArray<CheckId>> hits =
            [
                .. Enumerable.Range(0, words.Length - length + 1)
                    .Select(start => wordings.FindMeasured(words.AsSpan(start, length))).Where(hit => !hit.IsEmpty),
            ];
            if (hits.Length > 0) return hits.Length == 1 ? hits[0] : [.. hits.SelectMany(hit => hit).Distinct()];
        }

        return [];
    }

    private static bool HasFigure(TurnDraft turn, string piece) => piece.Any(char.IsDigit)
        || ReadingParser.Parse(turn.Heard(piece), ReadingContext.None) is ReadingResult.Readings;

    // "U–V 1.1, V–W 1.1": the next piece goes on with figures and names nothing new. "118 V L2 to ground" names again
    // what is read in several places.
    private static bool IsFigures(TurnDraft turn, string piece, ImmutableArray<CheckId> named, WordLists lists,
        Wordings wordings) =>
        HasFigure(turn, piece)
        && Named(lists.Read(piece), lists, wordings)
            .All(check => named.Contains(check) && turn.Library.Checks[check].Readings.Length > 1)
        && !PlainWords.Of(piece).Any(word => word.Length > 4 && word.All(char.IsLetter) && !IsOfForm(turn, named, word))
        && Clause.Read(piece, lists, wordings).Tiles.IsEmpty
        && ReadingParser.Parse(turn.Heard(piece),
            ReadingContext.None) is not ReadingResult.NotUnderstood { Reason: ReadingReason.NoReading };

    // "High side 22 bar, liquid pipe 35C": a line of the form of what was named.
    private static bool IsOfForm(TurnDraft turn, ImmutableArray<CheckId> named, string word) =>
        named.Any(check => turn.Library.Checks[check].Readings.Any(field => PlainWords.Of(field.Label).Contains(word)));
}
