using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Conversation.Understanding;

/// <summary>A reading as it is said back: the number in the unit it was given in, or what the meter showed.</summary>
internal static class ShownValue
{
    public static string Of(Reading reading) => reading.State switch
    {
        ReadingState.Number => $"{NumberText.Of(reading.Unit.FromSi(reading.Value), 5)} {reading.Unit.Symbol}".TrimEnd(),
        ReadingState.OpenCircuit => "OL",
        _ => $"0 {reading.Unit.Symbol}",
    };
}
