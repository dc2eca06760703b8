using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Readings;

public sealed class VoltageReadingTests
{
    // As technicians type and dictate; the meanings follow from the rules on ReadingParser.
    public static TheoryData<string, string, string> Messages => ReadingTable.Of(
        """
        volts | 1,200 V => 1.2 V
        voltage | one hundred and twenty => 120 V
        voltage | one twenty => 120 V
        voltage | two oh eight => 208 V
        voltage | two thirty => 230 V
        voltage | two hundred thirty volts => 230 V
        voltage | four eighty volts => 480 V
        lines | L1 118 L2 121 => L1=118 V; L2=121 V
        voltage | L1 118 L2 121 => L1=118 V; L2=121 V
        voltage | 0 V => 0 V
        voltage | 208/230 => ASK which-one [208 V | 230 V]
        voltage | 118/121 => ASK which-one [118 V | 121 V]
        voltage | 230 231 229 => 230 V; 231 V; 229 V
        lines | L1 118, L2 121 => L1=118 V; L2=121 V
        lines | 118 and 121 => L1=118 V; L2=121 V
        lines | L1 118.5V L2 121.2V => L1=118.5 V; L2=121.2 V
        lines | 118,121 => ASK which-one [L1=118.121 V; L2=118.121 V | L1=118.121 V | L2=118.121 V]
        lines | L1: 118 L2: 121 => L1=118 V; L2=121 V
        lines | L1=118v L2=121v => L1=118 V; L2=121 V
        lines | 118 on L1 and 121 on L2 => L1=118 V; L2=121 V
        lines | L1 is one eighteen and L2 is one twenty one => L1=118 V; L2=121 V
        lines | L1-L2 240 => L1-L2=240 V
        voltage | L1-L2 240, L1-N 120, L2-N 120 => L1-L2=240 V; L1-N=120 V; L2-N=120 V
        voltage | about 240 volts between L1 and L2 => L1-L2=240 V
        voltage | i have 238 across L1 and L2 => L1-L2=238 V
        voltage | 24.6 vac => 24.6 V
        voltage | 24VDC => 24 V
        voltage | 310 v dc on the bus => bus=310 V
        voltage | three ten volts DC => 310 V
        voltage | 120VAC => 120 V
        voltage | 0 => 0 V
        voltage | 0 volts => 0 V
        voltage | zero => 0 V
        voltage | dead => NONE no-reading
        voltage | 230 => 230 V
        voltage | it's 230 => 230 V
        voltage | I'm reading 2.47 => 2.47 V
        voltage | 2.47 mV => 2.47 mV
        voltage | 12 mv => 12 mV
        voltage | -12.4 V => -12.4 V
        voltage | minus 12 volts => -12 V
        voltage | 230V AC => 230 V
        voltage | 230-V => 230 V
        voltage | about 118 volts on the leg => 118 V
        voltage | 118 volt => 118 V
        voltage | 1.2k => ASK which-unit [1.2 kV | 1.2 kΩ]
        voltage | two hundred and eight => 208 V
        voltage | one hundred eighteen point five => 118.5 V
        voltage | 208. => 208 V
        voltage | 208! => 208 V
        voltage | 208 v? => ASK unsure [208 V]
        voltage | between 115 and 118 => ASK range [115 V | 118 V]
        voltage | 3v3 => 3.3 V
        voltage | 5V => 5 V
        voltage | 11.9 or 12 => ASK range [11.9 V | 12 V]
        voltage | no voltage => NONE no-reading
        voltage | OL => ASK unsure [OPEN]
        volts | 118,121 => ASK separator [118.121 V]
        voltage | one one eight => 118 V
        """);

    [Theory]
    [MemberData(nameof(Messages))]
    public void Parse_VoltageMessage_IsTakenAsMeant(string context, string message, string expected) =>
        Assert.Equal(expected, ReadingTable.Show(ReadingParser.Parse(message, ReadingTable.Context(context))));
}
