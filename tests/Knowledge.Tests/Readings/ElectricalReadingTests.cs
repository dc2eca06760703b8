using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Readings;

public sealed class ElectricalReadingTests
{
    // As technicians type and dictate: capacitors, currents and the like.
    // What each is taken for follows from the rules on ReadingParser.
    public static TheoryData<string, string, string> Messages => ReadingTable.Of(
        """
        capacitance | 45 mfd => 45 µF
        capacitance | 45 MF => ASK which-unit [45 µF | 45 mF]
        capacitance | 45 => 45 µF
        current | 5.2 => 5.2 A
        current | 500 ma => 500 mA
        capacitance | 45 uf => 45 µF
        capacitance | 45µF => 45 µF
        capacitance | 45 μF => 45 µF
        capacitance | 44.2 MFD => 44.2 µF
        capacitance | 44.2 mikes => 44.2 µF
        capacitance | 44.2 microfarads => 44.2 µF
        capacitance | 4.8 => 4.8 µF
        capacitance | 45/5 => ASK which-one [45 µF | 5 µF]
        capacitance | 470 nF => 470 nF
        capacitance | 45 F => ASK which-unit [45 µF | 45 °F]
        current | 8.2 amps => 8.2 A
        current | 8.2A => 8.2 A
        current | 8.2 a => 8.2 A
        current | 8.2 A on L1 => L1=8.2 A
        current | it's pulling 8.2 amps => 8.2 A
        current | drawing 8.2 => 8.2 A
        current | 4 ma => 4 mA
        current | 0.35 => 0.35 A
        current | 350 milliamps => 350 mA
        current | one point two amps => 1.2 A
        current | one twenty milliamps => ASK separator [1.2 mA | 120 mA]
        frequency | 60 => 60 Hz
        humidity | 45 => 45 %
        current | 4 to 20 mA => ASK range [4 mA | 20 mA]
        current | 5 milli amps => 5 mA
        current | 12 microamps => 12 µA
        current | point five => 0.5 A
        current | half an amp => 0.5 A
        current | two and a half amps => 2.5 A
        current | three quarters of an amp => 0.75 A
        current | .75A => 0.75 A
        current | 750mA => 750 mA
        current | 0,75 A => 0.75 A
        current | 15A inrush, 6.2A running => ASK which-one [15 A | 6.2 A]
        capacitance | 45+5 µF => ASK limit [45 µF | 5 µF]
        capacitance | 370V cap 45 uF => 45 µF
        capacitance | 45/5 mfd 440v reads 43.8 and 4.7 => ASK unsure [45 µF | 5 µF | 43.8 µF | 4.7 µF]
        capacitance | 43.8 / 4.7 => ASK which-one [43.8 µF | 4.7 µF]
        capacitance | thirty five micro farads => 35 µF
        capacitance | 35 microfarad plus or minus 6 percent => 35 µF
        capacitance | 35mfd ±6% => 35 µF
        capacitance | 7.5 UF => 7.5 µF
        capacitance | 7,5 µF => 7.5 µF
        capacitance | forty four point two => 44.2 µF
        capacitance | 44200 nF => 44200 nF
        """);

    [Theory]
    [MemberData(nameof(Messages))]
    public void Parse_ElectricalMessage_IsTakenAsMeant(string context, string message, string expected) =>
        Assert.Equal(expected, ReadingTable.Show(ReadingParser.Parse(message, ReadingTable.Context(context))));
}
