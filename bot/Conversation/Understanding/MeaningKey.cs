using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Writes one way to take a reading into the key of an option, and reads it back exactly.</summary>
internal static class MeaningKey
{
    /// <summary>The key of "none of these".</summary>
    public const string None = "none";

    private const char Between = ';';
    private const char Inside = '|';

    public static string Write(Meaning meaning) =>
        string.Join(Between, meaning.Readings.Select(reading => string.Join(
            Inside, reading.Label, ReadingStates.Name(reading.State),
            reading.Value.ToString("R", CultureInfo.InvariantCulture), reading.Unit.Code)));

    public static string Show(Meaning meaning) =>
        string.Join(", ", meaning.Readings.Select(reading =>
            $"{reading.Label} {ShownValue.Of(reading)}".TrimStart()));

    /// <summary>The readings of a key; empty when it is not one.</summary>
    public static ImmutableArray<Reading> Read(string key)
    {
        var readings = ImmutableArray.CreateBuilder<Reading>();
        foreach (string part in key.Split(Between))
        {
            if (part.Split(Inside) is not [var label, var state, var number, var code]
                || !Unit.TryParse(code, out Unit? unit)
                || !double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out double value))
                return [];
            var reading = new Reading(label.Length == 0 ? null : label, ReadingStates.Of(state), value, unit, "");
            readings.Add(reading with { Said = ShownValue.Of(reading) });
        }

        return readings.ToImmutable();
    }
}
