using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Readings;

public sealed class TemperatureReadingTests
{
    // As technicians type and dictate; the meanings follow from the rules on ReadingParser.
    public static TheoryData<string, string, string> Messages => ReadingTable.Of(
        """
        temperature-eu | twenty four degrees => 24 °C
        temperature-us | twenty four degrees => 24 °F
        temperature | twenty four degrees => ASK which-unit [24 °C | 24 °F]
        temperature | minus 5 C => -5 °C
        temperature | -5C => -5 °C
        temperature | −5 °C => -5 °C
        temperature | 24 => ASK no-unit [24 °C | 24 °F]
        temperature-us | 72.5 => 72.5 °F
        temperature-us | 72 => 72 °F
        temperature-us | it's 72 => 72 °F
        temperature-us | room is 72 => room=72 °F
        temperature-us | about 72 degrees => 72 °F
        temperature-us | 68.4 => 68.4 °F
        temperature-eu | 24,5 => 24.5 °C
        temperature-eu | -3 => -3 °C
        temperature-eu | minus three => -3 °C
        temperature-eu | three below zero => -3 °C
        temperature-eu | 5 below zero C => -5 °C
        temperature-eu | 24C => 24 °C
        temperature-eu | 75F => 75 °F
        temperature-us | 24C => 24 °C
        temperature-us | 24 => 24 °F
        superheat | 12 => ASK no-unit [12 K | 12 °F]
        superheat | 12F => 12 °F
        superheat | 12 degrees F => 12 °F
        superheat | 10K => 10 K
        temperature-us | suction line 52 => suction=52 °F
        """);

    [Theory]
    [MemberData(nameof(Messages))]
    public void Parse_TemperatureMessage_IsTakenAsMeant(string context, string message, string expected) =>
        Assert.Equal(expected, ReadingTable.Show(ReadingParser.Parse(message, ReadingTable.Context(context))));
}
