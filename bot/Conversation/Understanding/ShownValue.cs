using DxAssistant.Knowledge.Pictures;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Conversation.Understanding;

/// <summary>A reading as it is said back: the number in the unit it was given in, or what the meter showed.</summary>
internal static class ShownValue
{
    public static string Of(Reading reading) => Figures.Of(reading);
}
