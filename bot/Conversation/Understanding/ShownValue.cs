using DxAssistant.Conversation.Events;
using DxAssistant.Knowledge.Pictures;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Conversation.Understanding;

/// <summary>A reading as it is said back: the number in the unit it was given in, or what the meter showed.</summary>
internal static class ShownValue
{
    /// <summary>A reading of the log.</summary>
    public static string Of(GivenReading given) =>
        Of(new Reading(given.Label, ReadingStates.Of(given.State), given.Value,
            Unit.TryParse(given.Unit, out Unit? unit)
                ? unit
                : throw new ArgumentException($"no unit {given.Unit}", nameof(given)), given.Words));

    public static string Of(Reading reading) => Figures.Of(reading);
}
