using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Readings;

public sealed class PressureReadingTests
{
    // As technicians type and dictate: pressures.
    // What each is taken for follows from the rules on ReadingParser.
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
        vacuum | 500 => ASK no-unit [500 micron | 500 Pa(a)]
        vacuum | pulled down to 350 microns => 350 micron
        vacuum | 350 micron => 350 micron
        vacuum | 29.9 inHg => ASK which-unit [29.9 inHg | 29.9 inHg vac]
        pressure | 118 psi => 118 psi
        pressure | 118 PSIG => 118 psig
        pressure | one eighteen psi => 118 psi
        pressure | eight bar => 8 bar
        pressure | 8,1 bar => 8.1 bar
        pressure | 810 kPa => 810 kPa
        pressure | 0,81 MPa => 0.81 MPa
        pressure | .81 mpa => 0.81 MPa
        pressure | 350 over 118 psi => ASK limit [118 psi]
        pressure | 118/350 => ASK which-one [118 psi | 118 kPa | 118 bar | 350 psi | 350 kPa]
        pressure | low 118 high 350 psi => ASK unsure [118 psi; 350 psi | 118 kPa; 350 psi | 118 bar; 350 psi]
        pressure | suction 118 PSI, discharge 350 PSI => suction=118 psi; discharge=350 psi
        pressure | suction one eighteen discharge three fifty psi => suction=118 psi; discharge=350 psi
        pressure | 120 pounds on the low side => low side=120 psi
        pressure | 120 lb => 120 psi
        pressure | 500 microns => 500 micron
        pressure | 29 inches of vacuum => 29 inHg vac
        pressure | -5 psi => -5 psi
        pressure | vacuum => NONE no-reading
        pressure | 0 psi => 0 psi
        pressure | minus 0.5 bar => -0.5 bar
        """);

    [Theory]
    [MemberData(nameof(Messages))]
    public void Parse_PressureMessage_IsTakenAsMeant(string context, string message, string expected) =>
        Assert.Equal(expected, ReadingTable.Show(ReadingParser.Parse(message, ReadingTable.Context(context))));
}
