using System.Collections.Immutable;
using System.Text.RegularExpressions;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Conversation.Understanding;

/// <summary>
/// Asks back when temperatures came in words without a scale and can be meant on either: all of them, for one
/// thermometer has one.
/// </summary>
/// <remarks>
/// In a form the scale stands beside the field; in a sentence "20 degrees" proves a good sensor bad on the wrong one.
/// </remarks>
internal static class BareTemperature
{
    private static readonly Regex SaidScale = new(
        @"\d\s*[CFcf]\b|°\s*[CFcf]|\b(deg(rees?)?\s*)?[CFcf]\b|celsius|centigrade|fahrenheit|kelvin",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex SaidMetric =
        new(@"\b(k|m)?pa\b|(?<![a-z])bars?\b|\d(bar|kpa|mpa)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex SaidPsi =
        new(@"psi[ga]?\b|\b(pounds|lbs)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    public static ReadingResult Settle(CheckPage page, ReadingResult result)
    {
        if (result is not ReadingResult.Readings { List: var list } read || list.Any(SaysScale)) return result;
        if (Beside(page, list) is { IsDefault: false } settled) return read with { List = settled };
        ImmutableArray<Reading> other = list;
        for (int place = 0; place < list.Length; place++)
        {
            if (!IsTemperature(list[place])) continue;
            if (OnOtherScale(page, list, place) is not { } turned) return result;
            other = other.SetItem(place, turned);
        }

        return other.SequenceEqual(list)
            ? result
            : new ReadingResult.AskBack(ReadingReason.WhichUnit, [new Meaning(list), new Meaning(other)]);
    }

    private static bool IsTemperature(Reading reading) =>
        reading is { State: ReadingState.Number, Unit.Kind: QuantityKind.Temperature };

    private static bool SaysScale(Reading reading) => IsTemperature(reading) && SaidScale.IsMatch(reading.Said);

    // Who reads a gauge in bar or kPa reads Celsius, who reads it in psi Fahrenheit; common practice, no source. None
    // where a number cannot be that.
    private static ImmutableArray<Reading> Beside(CheckPage page, ImmutableArray<Reading> list)
    {
        if (list.Select(ScaleOfGauge).OfType<string>().Distinct().ToArray() is not [var scale]) return default;
        ImmutableArray<Reading> settled = list;
        for (int place = 0; place < list.Length; place++)
        {
            if (!IsTemperature(list[place])) continue;
            if (On(scale, page, list, place) is not { } read) return default;
            settled = settled.SetItem(place, read);
        }

        return settled;
    }

    private static string? ScaleOfGauge(Reading reading) =>
        SaidPsi.IsMatch(reading.Said) ? "°F" : SaidMetric.IsMatch(reading.Said) ? "°C" : null;

    // The same number on the other scale, where that is possible too.
    private static Reading? OnOtherScale(CheckPage page, ImmutableArray<Reading> list, int place) =>
        On(list[place].Unit.Symbol == "°F" ? "°C" : "°F", page, list, place);

    private static Reading? On(string scale, CheckPage page, ImmutableArray<Reading> list, int place)
    {
        double number = list[place].Unit.FromSi(list[place].Value);
        if (!Unit.TryParse(scale, QuantityKind.Temperature, out Unit? unit)) return null;
        Reading other = list[place] with { Value = unit.ToSi(number), Unit = unit };
        return Lines(page, list, place).Any(line => other.Value >= line.Lowest && other.Value <= line.Highest)
            ? other
            : null;
    }

    // The lines that a temperature may stand in: that of its label, or of its place where all of them were given.
    private static ReadingField[] Lines(CheckPage page, ImmutableArray<Reading> list, int place)
    {
        ReadingField[] lines = [.. page.Readings.Where(line => line.Unit.Kind == QuantityKind.Temperature)];
        if (list[place].Label is { } label
            && lines.Where(line => line.Label == label).ToArray() is { Length: > 0 } named)
            return named;
        return list.Length == page.Readings.Length && list.All(reading => reading.Label is null)
            && page.Readings[place].Unit.Kind == QuantityKind.Temperature ? [page.Readings[place]] : lines;
    }
}
