using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Readings;

public sealed class SensorReadingTests
{
    // As technicians type and dictate: one sensor, the form in kΩ.
    // What each is taken for follows from the rules on ReadingParser.
    public static TheoryData<string, string, string> Messages => ReadingTable.Of(
        """
        sensor | 1,200 ohms => 1200 Ω
        sensor | 1.200 => 1.2 kΩ
        sensor | 10,2 => 10.2 kΩ
        sensor | 850 => ASK impossible [850 Ω]
        sensor | 10.2 => 10.2 kΩ
        sensor | 10.200 => 10.2 kΩ
        sensor | 10,200 => 10.2 kΩ
        sensor | 10200 => ASK impossible [10200 Ω]
        sensor | 10200 ohms => 10200 Ω
        sensor | 10,200 ohms => 10200 Ω
        sensor | 10.200 ohms => 10200 Ω
        sensor | 10.2 ohms => ASK impossible [10.2 kΩ]
        sensor | 10.2 meg => ASK impossible [10.2 kΩ]
        sensor | 2.1 => 2.1 kΩ
        sensor | 2,1 => 2.1 kΩ
        sensor | .85 => 0.85 kΩ
        sensor | 850 ohms => 850 Ω
        sensor | 0 => SHORT
        sensor | OL => OPEN
        sensor | 1 => ASK over-range [1 kΩ | OPEN]
        sensor | 1 k => 1 kΩ
        sensor | 500 => 500 kΩ
        sensor | 501 => ASK impossible [501 Ω]
        sensor | 1200 => ASK impossible [1200 Ω]
        sensor | 10.2 at 24C => 10.2 kΩ; 24 °C
        sensor | 10.2 at 75 => 10.2 kΩ ?? ASK no-unit [75 °C | 75 °F]
        sensor | 10.2, 75F => 10.2 kΩ; 75 °F
        sensor | 10.2k 75F in here => 10.2 kΩ; room=75 °F
        sensor | -10 => ASK impossible []
        sensor | 10.2V => 10.2 V
        sensor | 24C => 24 °C
        sensor | 10 to 11 => ASK range [10 kΩ | 11 kΩ]
        sensor | about 10 and a half => 10.5 kΩ
        sensor | ten point two => 10.2 kΩ
        sensor | ten => 10 kΩ
        sensor | 10 point two => 10.2 kΩ
        sensor | one twenty => ASK separator [1.2 kΩ | 120 kΩ]
        sensor | open => OPEN
        sensor | it's open => OPEN
        sensor | beeps => SHORT
        sensor | 10.2 10.3 => 10.2 kΩ; 10.3 kΩ
        sensor | first 10.2 then 10.3 => ASK unsure [10.2 kΩ; 10.3 kΩ]
        sensor | 10.2. ok? => 10.2 kΩ
        sensor | 5.5k, no, 6.5k => ASK which-one [5.5 kΩ | 6.5 kΩ]
        sensor | 5.5 no 6.5 => ASK unsure [5.5 kΩ; 6.5 kΩ]
        """);

    [Theory]
    [MemberData(nameof(Messages))]
    public void Parse_SensorMessage_IsTakenAsMeant(string context, string message, string expected) =>
        Assert.Equal(expected, ReadingTable.Show(ReadingParser.Parse(message, ReadingTable.Context(context))));
}
