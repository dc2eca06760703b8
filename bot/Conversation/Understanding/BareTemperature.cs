using System.Collections.Immutable;
using System.Text.RegularExpressions;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Asks back when temperatures came in words without a scale and can be meant on either: all of them, for one thermometer has one.</summary>
/// <remarks>In a form the scale stands beside the field; in a sentence "20 degrees" proves a good sensor bad on the wrong one.</remarks>
internal static class BareTemperature
{
    private static readonly Regex SaidScale = new(@"\d\s*[CFcf]\b|°\s*[CFcf]|\b(deg(rees?)?\s*)?[CFcf]\b|celsius|centigrade|fahrenheit|kelvin", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    public static ReadingResult Settle(CheckPage page, ReadingResult result)
    {
        if (result is not ReadingResult.Readings { List: var list } || list.Any(SaysScale)) return result;
        ImmutableArray<Reading> other = list;
        for (int place = 0; place < list.Length; place++)
        {
            if (!IsTemperature(list[place])) continue;
            if (OnOtherScale(page, list[place]) is not { } turned) return result;
            other = other.SetItem(place, turned);
        }

        return other.SequenceEqual(list) ? result : new ReadingResult.AskBack(ReadingReason.WhichUnit, [new Meaning(list), new Meaning(other)]);
    }

    private static bool IsTemperature(Reading reading) => reading is { State: ReadingState.Number, Unit.Kind: QuantityKind.Temperature };

    private static bool SaysScale(Reading reading) => IsTemperature(reading) && SaidScale.IsMatch(reading.Said);

    // The same number on the other scale, where that is possible too.
    private static Reading? OnOtherScale(CheckPage page, Reading reading)
    {
        double number = reading.Unit.FromSi(reading.Value);
        if (!Unit.TryParse(reading.Unit.Symbol == "°F" ? "°C" : "°F", QuantityKind.Temperature, out Unit? unit)) return null;
        Reading other = reading with { Value = unit.ToSi(number), Unit = unit };
        return page.Readings.Any(field => field.Unit.Kind == QuantityKind.Temperature
            && (reading.Label is null || !page.Readings.Any(line => line.Label == reading.Label) || field.Label == reading.Label)
            && other.Value >= field.Lowest && other.Value <= field.Highest) ? other : null;
    }
}
