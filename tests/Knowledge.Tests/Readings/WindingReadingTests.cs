using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Readings;

public sealed class WindingReadingTests
{
    // As technicians type and dictate: three windings, the form in Ω.
    // What each is taken for follows from the rules on ReadingParser.
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
        windings | 1.1,1.2,1.1 => U–V=1.1 Ω; V–W=1.2 Ω; U–W=1.1 Ω
        windings | 1.1, 1.2 & 1.1 => U–V=1.1 Ω; V–W=1.2 Ω; U–W=1.1 Ω
        windings | 1.1 and 1.2 and 1.1 => U–V=1.1 Ω; V–W=1.2 Ω; U–W=1.1 Ω
        windings | 1.1; 1.2; 1.1 => U–V=1.1 Ω; V–W=1.2 Ω; U–W=1.1 Ω
        windings | U-V: 1.1 V-W: 1.2 U-W: 1.1 => U–V=1.1 Ω; V–W=1.2 Ω; U–W=1.1 Ω
        windings | u-v 1.1 / v-w 1.2 / u-w 1.1 => U–V=1.1 Ω; V–W=1.2 Ω; U–W=1.1 Ω
        windings | 1.1 uv 1.2 vw 1.1 uw => U–V=1.1 Ω; V–W=1.2 Ω; U–W=1.1 Ω
        windings | 1.1 ohms all the way around => ASK which-one [U–V=1.1 Ω; V–W=1.1 Ω; U–W=1.1 Ω | U–V=1.1 Ω | V–W=1.1 Ω | U–W=1.1 Ω]
        windings | all the same 1.1 => U–V=1.1 Ω; V–W=1.1 Ω; U–W=1.1 Ω
        windings | all 1.1 ohms => U–V=1.1 Ω; V–W=1.1 Ω; U–W=1.1 Ω
        windings | 1.1 ohm each => U–V=1.1 Ω; V–W=1.1 Ω; U–W=1.1 Ω
        windings | equal, 1.1 => ASK which-one [U–V=1.1 Ω; V–W=1.1 Ω; U–W=1.1 Ω | U–V=1.1 Ω | V–W=1.1 Ω | U–W=1.1 Ω]
        windings | they are all the same at 1.1 => U–V=1.1 Ω; V–W=1.1 Ω; U–W=1.1 Ω
        windings | U-V 1.1 the others are open => ASK which-one [U–V=1.1 Ω | OPEN]
        windings | U-V 1.1, rest OL => ASK which-one [U–V=1.1 Ω | OPEN]
        windings | U-V 1.1, V-W OL, U-W OL => U–V=1.1 Ω; V–W=OPEN; U–W=OPEN
        windings | UV is fine => NONE no-reading
        windings | V-U 1.1 => U–V=1.1 Ω
        windings | V to U 1.1 => U–V=1.1 Ω
        windings | W-V 1.2 => V–W=1.2 Ω
        windings | 1.1k 1.1k 1.2k => ASK impossible [U–V=1.1 Ω; V–W=1.1 Ω; U–W=1.2 Ω]
        windings | 1.1 1.1 OL => ASK unsure [U–V=1.1 Ω; V–W=1.1 Ω; U–W=OPEN]
        windings | 42.1 OL OL => ASK unsure [U–V=42.1 Ω; V–W=OPEN; U–W=OPEN]
        windings | 42.1 / OL / OL => ASK unsure [U–V=42.1 Ω; V–W=OPEN; U–W=OPEN]
        windings | 17 17.1 16.9 => U–V=17 Ω; V–W=17.1 Ω; U–W=16.9 Ω
        windings | OL OL 1.1 => ASK unsure [U–V=OPEN; V–W=OPEN; U–W=1.1 Ω]
        windings | OL, OL, OL => U–V=OPEN; V–W=OPEN; U–W=OPEN
        windings | OL => ASK which-one [U–V=OPEN; V–W=OPEN; U–W=OPEN | U–V=OPEN | V–W=OPEN | U–W=OPEN]
        windings | all OL => U–V=OPEN; V–W=OPEN; U–W=OPEN
        windings | open on all three => U–V=OPEN; V–W=OPEN; U–W=OPEN
        windings | open between U and V => U–V=OPEN
        windings | uv 11 vw 1.1 uw 1.1 => U–V=11 Ω; V–W=1.1 Ω; U–W=1.1 Ω
        windings | 1.1 1.1 1.1 1.1 => ASK which-one [1.1 Ω | 1.1 Ω | 1.1 Ω | 1.1 Ω]
        windings | 1,1 1,1 1,2 => U–V=1.1 Ω; V–W=1.1 Ω; U–W=1.2 Ω
        windings | 1,1, 1,1, 1,2 => U–V=1.1 Ω; V–W=1.1 Ω; U–W=1.2 Ω
        windings | 0.0 0.0 0.0 => U–V=SHORT; V–W=SHORT; U–W=SHORT
        windings | 0.8 0.8 0.9 ohms and OL to ground => ASK which-one [0.8 Ω | 0.8 Ω | 0.9 Ω | OPEN]
        windings | point eight, point eight, point nine => U–V=0.8 Ω; V–W=0.8 Ω; U–W=0.9 Ω
        windings | eight tenths on all three => U–V=0.8 Ω; V–W=0.8 Ω; U–W=0.8 Ω
        windings | U1-V1 1.1 => ASK which-one [U–V=1.1 Ω; V–W=1.1 Ω; U–W=1.1 Ω | U–V=1.1 Ω | V–W=1.1 Ω | U–W=1.1 Ω]
        windings | 1-2 1.1, 2-3 1.2, 1-3 1.1 => ASK which-one [1 Ω | 2 Ω | 1.1 Ω | 2 Ω | 3 Ω]
        """);

    [Theory]
    [MemberData(nameof(Messages))]
    public void Parse_WindingMessage_IsTakenAsMeant(string context, string message, string expected) =>
        Assert.Equal(expected, ReadingTable.Show(ReadingParser.Parse(message, ReadingTable.Context(context))));
}
