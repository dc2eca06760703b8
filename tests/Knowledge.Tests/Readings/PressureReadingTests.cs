using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Readings;

public sealed class PressureReadingTests
{
    // As technicians type and dictate: pressures. What each is taken for follows from the rules on ReadingParser.
    public static TheoryData<string, string, string> Messages => ReadingTable.Of(
        """
        gauges-us | 118 => 118 psig
        pressure | 118 => ASK no-unit [118 psi | 118 kPa | 118 bar]
        gauges-us | suction 118, discharge 350 => suction=118 psig; discharge=350 psig
        gauges-us | 118 psig => 118 psig
        gauges-us | 118# => 118 psi
        gauges-us | 118 pounds => 118 psi
        gauges-us | 118 lbs => 118 psi
        gauges-us | 8.1 bar => 8.1 bar
        gauges-us | 815 kpa => 815 kPa
        gauges-us | 0.8 MPa => 0.8 MPa
        gauges-us | 0.8 mpa => 0.8 MPa
        gauges-us | one eighteen => 118 psig
        gauges-us | one hundred eighteen pounds => 118 psi
        gauges-us | a hundred eighteen psi => 118 psi
        gauges-us | 118 p s i => 118 psi
        gauges-us | 118 p.s.i.g. => 118 psig
        gauges-us | nitrogen at 500 psi => 500 psi
        vacuum | 500 microns => 500 micron
        vacuum | 500 => 500 micron
        vacuum | pulled down to 350 microns => 350 micron
        vacuum | 350 micron => 350 micron
        vacuum | 29.9 inHg => 29.9 inHg
        """);

    [Theory]
    [MemberData(nameof(Messages))]
    public void Parse_PressureMessage_IsTakenAsMeant(string context, string message, string expected) =>
        Assert.Equal(expected, ReadingTable.Show(ReadingParser.Parse(message, ReadingTable.Context(context))));
}
