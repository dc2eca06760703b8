using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Readings;

public sealed class WindingReadingTests
{
    // As technicians type and dictate; the meanings follow from the rules on ReadingParser.
    public static TheoryData<string, string, string> Messages => ReadingTable.Of(
        """
        windings | U-V 1.1, V-W 1.2, U-W 1.1 => U–V=1.1 Ω; V–W=1.2 Ω; U–W=1.1 Ω
        windings | 1.1 1.1 1.2 => U–V=1.1 Ω; V–W=1.1 Ω; U–W=1.2 Ω
        windings | all three 1.1 => U–V=1.1 Ω; V–W=1.1 Ω; U–W=1.1 Ω
        windings | 1.1 same on all => U–V=1.1 Ω; V–W=1.1 Ω; U–W=1.1 Ω
        windings | 1.1 => ASK which-one [U–V=1.1 Ω; V–W=1.1 Ω; U–W=1.1 Ω | U–V=1.1 Ω | V–W=1.1 Ω | U–W=1.1 Ω]
        windings | 1.1 1.2 => ASK which-one [1.1 Ω | 1.2 Ω]
        windings | U to V one point one, V to W one point two, U to W one point one => U–V=1.1 Ω; V–W=1.2 Ω; U–W=1.1 Ω
        windings | 1.1 across the board => U–V=1.1 Ω; V–W=1.1 Ω; U–W=1.1 Ω
        windings | all three read 1.1 ohms => U–V=1.1 Ω; V–W=1.1 Ω; U–W=1.1 Ω
        windings | they're all 1.1 => U–V=1.1 Ω; V–W=1.1 Ω; U–W=1.1 Ω
        windings | 1.1 on each => U–V=1.1 Ω; V–W=1.1 Ω; U–W=1.1 Ω
        windings | UV 1.1 VW 1.2 UW OL => U–V=1.1 Ω; V–W=1.2 Ω; U–W=OPEN
        windings | u-v open, v-w 1.2, u-w open => U–V=OPEN; V–W=1.2 Ω; U–W=OPEN
        windings | U/V=1.1 V/W=1.2 U/W=1.15 => U–V=1.1 Ω; V–W=1.2 Ω; U–W=1.15 Ω
        windings | uv=1.1, vw=1.2, uw=1.1 => U–V=1.1 Ω; V–W=1.2 Ω; U–W=1.1 Ω
        windings | U-V:1.1 => U–V=1.1 Ω
        windings | 1.1 on U-V, 1.2 on V-W and 1.1 on U-W => U–V=1.1 Ω; V–W=1.2 Ω; U–W=1.1 Ω
        windings | between u and v 1.1 => U–V=1.1 Ω
        windings | W-U 1.1 => U–W=1.1 Ω
        windings | 1.1, 1.2, 1.1 => U–V=1.1 Ω; V–W=1.2 Ω; U–W=1.1 Ω
        windings | 1.1/1.2/1.1 => U–V=1.1 Ω; V–W=1.2 Ω; U–W=1.1 Ω
        windings | 1.1 / 1.2 / 1.1 ohms => U–V=1.1 Ω; V–W=1.2 Ω; U–W=1.1 Ω
        windings | 1,1 1,2 1,1 => U–V=1.1 Ω; V–W=1.2 Ω; U–W=1.1 Ω
        windings | 1,1; 1,2; 1,1 => U–V=1.1 Ω; V–W=1.2 Ω; U–W=1.1 Ω
        windings | one point one, one point one, one point two => U–V=1.1 Ω; V–W=1.1 Ω; U–W=1.2 Ω
        windings | all open => U–V=OPEN; V–W=OPEN; U–W=OPEN
        windings | all three open => U–V=OPEN; V–W=OPEN; U–W=OPEN
        windings | shorted U to V => U–V=SHORT
        windings | U-V and V-W both 1.1, U-W 1.2 => ASK which-one [V–W=1.1 Ω | U–W=1.2 Ω]
        """);

    [Theory]
    [MemberData(nameof(Messages))]
    public void Parse_WindingMessage_IsTakenAsMeant(string context, string message, string expected) =>
        Assert.Equal(expected, ReadingTable.Show(ReadingParser.Parse(message, ReadingTable.Context(context))));
}
