using System.Text.RegularExpressions;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Asks back when a temperature came in words without its scale and can be meant on either.</summary>
/// <remarks>In a form the scale stands beside the field; in a sentence "20 degrees" proves a good sensor bad on the wrong one.</remarks>
internal static class BareTemperature
{
    private static readonly Regex SaidScale = new(@"\d\s*[CFcf]\b|°\s*[CFcf]|\b(deg(rees?)?\s*)?[CFcf]\b|celsius|centigrade|fahrenheit|kelvin", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    public static ReadingResult Settle(CheckPage page, ReadingResult result)
    {
        if (result is not ReadingResult.Readings { List: var list }) return result;
        for (int place = 0; place < list.Length; place++)
            if (OtherScale(page, list[place]) is { } other)
                return new ReadingResult.AskBack(
                    ReadingReason.WhichUnit, [new Meaning(list), new Meaning(list.SetItem(place, other))]);
        return result;
    }

    // The same number on the other scale, where that is possible too.
    private static Reading? OtherScale(CheckPage page, Reading reading)
    {
        if (reading is not { State: ReadingState.Number, Unit.Kind: QuantityKind.Temperature }) return null;
        if (SaidScale.IsMatch(reading.Said)) return null;
        double number = reading.Unit.FromSi(reading.Value);
        if (!Unit.TryParse(reading.Unit.Symbol == "°F" ? "°C" : "°F", QuantityKind.Temperature, out Unit? unit)) return null;
        Reading other = reading with { Value = unit.ToSi(number), Unit = unit };
        return page.Readings.Any(field => field.Unit.Kind == QuantityKind.Temperature
            && other.Value >= field.Lowest && other.Value <= field.Highest) ? other : null;
    }
}
