using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Readings;

public sealed class ResistanceReadingTests
{
    // As technicians type and dictate; the meanings follow from the rules on ReadingParser.
    public static TheoryData<string, string, string> Messages => ReadingTable.Of(
        """
        resistance | 10.2k => 10.2 kΩ
        resistance | 10K => 10 kΩ
        resistance | 4k7 => 4.7 kΩ
        resistance | 1M2 => 1.2 MΩ
        resistance | 0R5 => 0.5 Ω
        resistance | 10R => 10 Ω
        resistance | 2.1 kilohms => 2.1 kΩ
        resistance | 2.1 kilo ohms => 2.1 kΩ
        resistance | 5 meg => 5 MΩ
        resistance | 5 M => 5 MΩ
        resistance | 5 m => ASK which-unit [5 MΩ | 5 mΩ]
        resistance | 500 MΩ => 500 MΩ
        resistance | 500 mohm => ASK which-unit [500 MΩ | 500 mΩ]
        resistance | 500 MOHM => 500 MΩ
        resistance | 1,200 ohms => ASK separator [1.2 Ω | 1200 Ω]
        resistance | 1.200 ohms => ASK separator [1.2 Ω | 1200 Ω]
        sensor | 1,200 ohms => 1200 Ω
        sensor | 1.200 => 1.2 kΩ
        sensor | 10,2 => 10.2 kΩ
        resistance | 1/2 ohm => 0.5 Ω
        resistance | 1 1/2 ohms => 1.5 Ω
        resistance | half an ohm => 0.5 Ω
        resistance | two and a half k => 2.5 kΩ
        resistance | two point one k => 2.1 kΩ
        resistance | between 10 and 12 ohms => ASK range [10 Ω | 12 Ω]
        resistance | 10-12k => ASK range [10 kΩ | 12 kΩ]
        resistance | about 10k => 10 kΩ
        resistance | ~10k => 10 kΩ
        resistance | 1.1 1.1 1.2 ohms => 1.1 Ω; 1.1 Ω; 1.2 Ω
        resistance | OL => OPEN
        resistance | O.L => OPEN
        resistance | 0L => OPEN
        resistance | 0.L => OPEN
        resistance | open => OPEN
        resistance | infinite => OPEN
        resistance | no continuity => OPEN
        resistance | over limit => OPEN
        resistance | 1 . => ASK over-range [1 Ω | 1 kΩ | 1 MΩ | OPEN]
        resistance | 1 => ASK over-range [1 Ω | 1 kΩ | 1 MΩ | OPEN]
        resistance | short => SHORT
        resistance | shorted => SHORT
        resistance | zero ohms => SHORT
        resistance | 0.0 => SHORT
        resistance | beeps => SHORT
        resistance | dead short => SHORT
        resistance | swapped 2 boards, now 10.2k => 10.2 kΩ
        sensor | 850 => ASK impossible [850 Ω]
        sensor | 10.2 => 10.2 kΩ
        resistance | >500 meg => ASK limit [500 MΩ]
        resistance | over 500 megohms => ASK limit [500 MΩ]
        resistance | 10 200 ohms => ASK separator [10200 Ω]
        resistance | not open => NONE no-reading
        resistance | ten k => 10 kΩ
        resistance | ten kay ohms => 10 kΩ
        resistance | 10 point 2 k => 10.2 kΩ
        resistance | 10.2 K ohm => 10.2 kΩ
        resistance | 10.2kohm => 10.2 kΩ
        resistance | 10.2 kOhms => 10.2 kΩ
        resistance | 10.2k ohms at 77F => 10.2 kΩ; 77 °F
        resistance | 10.2KΩ @ 77°F => 10.2 kΩ; 77 °F
        resistance | 10,2 kΩ bei 25 °C => 10.2 kΩ; 25 °C
        resistance | 2.1k-ohm => 2.1 kΩ
        resistance | 0.5 ohms => 0.5 Ω
        resistance | .5 ohms => 0.5 Ω
        resistance | point five ohms => 0.5 Ω
        resistance | 1.5 megohm => 1.5 MΩ
        resistance | 1.5 meg ohms => 1.5 MΩ
        resistance | 1.5 MEG => 1.5 MΩ
        resistance | 550 megohms => 550 MΩ
        resistance | twelve hundred ohms => 1200 Ω
        resistance | 12 hundred ohms => 1200 Ω
        resistance | ten thousand ohms => 10000 Ω
        resistance | 10000 => ASK no-unit [10000 Ω | 10000 kΩ | 10000 MΩ]
        resistance | 10,000 ohms => ASK separator [10 Ω | 10000 Ω]
        resistance | 10.000 ohms => ASK separator [10 Ω | 10000 Ω]
        resistance | 10,000.5 ohms => 10000.5 Ω
        resistance | 10 000 Ω => ASK separator [10000 Ω]
        resistance | 1'200 ohms => 1200 Ω
        resistance | 1e4 ohms => NONE no-reading
        resistance | 1.2e3 ohms => 1200 Ω
        resistance | nine point eight five k => 9.85 kΩ
        resistance | nine eight five k => ASK separator [9.85 kΩ | 985 kΩ]
        resistance | one twenty ohms => ASK separator [1.2 Ω | 120 Ω]
        resistance | one hundred twenty ohms => 120 Ω
        resistance | a hundred and twenty ohms => 120 Ω
        resistance | three quarters of an ohm => 0.75 Ω
        resistance | one and a half ohms => 1.5 Ω
        resistance | 1½ ohm => 1.5 Ω
        resistance | ½ Ω => 0.5 Ω
        resistance | quarter ohm => 0.25 Ω
        resistance | 47R => 47 Ω
        resistance | 2k2 => 2.2 kΩ
        resistance | 10k5 => 10.5 kΩ
        resistance | .8 => ASK no-unit [0.8 Ω | 0.8 kΩ | 0.8 MΩ]
        resistance | open line => OPEN
        resistance | infinity => OPEN
        resistance | inf => OPEN
        resistance | it reads open => OPEN
        resistance | sensor is open => OPEN
        resistance | the winding is open => OPEN
        resistance | wide open => OPEN
        resistance | the service valve is open => NONE no-reading
        resistance | OL on all three => OPEN; OPEN; OPEN
        resistance | o.l. => OPEN
        resistance | O L => OPEN
        resistance | .OL => OPEN
        resistance | OL M => OPEN
        resistance | 0.L MΩ => OPEN
        resistance | over load => OPEN
        resistance | overload => OPEN
        resistance | out of range => OPEN
        resistance | no beep => OPEN
        resistance | doesn't beep => OPEN
        resistance | it beeps => SHORT
        resistance | short to ground => SHORT
        resistance | shorted out => SHORT
        resistance | shorted to ground => SHORT
        resistance | dead shorted => SHORT
        resistance | has continuity => SHORT
        resistance | good continuity => SHORT
        resistance | continuity => SHORT
        resistance | 00.0 => SHORT
        resistance | 0 => SHORT
        resistance | 0 ohms => SHORT
        resistance | 0.0 ohms => SHORT
        resistance | 0.1 => ASK no-unit [0.1 Ω | 0.1 kΩ | 0.1 MΩ]
        resistance | 0.1 ohms => 0.1 Ω
        resistance | no short => NONE no-reading
        resistance | not shorted => NONE no-reading
        resistance | is it open? => ASK unsure [OPEN]
        resistance | not 10k, 8k => 8 kΩ
        resistance | 10k or so => 10 kΩ
        resistance | 10k-ish => 10 kΩ
        resistance | 10ish k => 10 kΩ
        resistance | almost 10k => 10 kΩ
        resistance | just under 10k => ASK limit [10 kΩ]
        resistance | less than 1 ohm => ASK limit [1 Ω]
        resistance | <1 ohm => ASK limit [1 Ω]
        resistance | <0.5Ω => ASK limit [0.5 Ω]
        resistance | 10k+ => ASK limit [10 kΩ]
        resistance | at least 500 meg => ASK limit [500 MΩ]
        resistance | at 10k => 10 kΩ
        resistance | 10 k. => 10 kΩ
        resistance | 10k, 72F => 10 kΩ; 72 °F
        resistance | 72, 10.2k => ASK unsure [72 Ω; 10.2 kΩ | 72 kΩ; 10.2 kΩ | 72 MΩ; 10.2 kΩ]
        resistance | 10.2k, 72 => ASK unsure [10.2 kΩ; 72 Ω | 10.2 kΩ; 72 kΩ | 10.2 kΩ; 72 MΩ]
        resistance | 10.2k and 9.8k => 10.2 kΩ; 9.8 kΩ
        resistance | 10.2k 9.8k => 10.2 kΩ; 9.8 kΩ
        resistance | 10.2, 9.8 and 10.1k => 10.2 kΩ; 9.8 kΩ; 10.1 kΩ
        resistance | room 10.2k, coil 9.8k => room=10.2 kΩ; coil=9.8 kΩ
        resistance | room sensor 10.2k coil sensor 9.8 => ASK no-unit [room sensor=10.2 kΩ; coil sensor=9.8 Ω | room sensor=10.2 kΩ; coil sensor=9.8 kΩ | room sensor=10.2 kΩ; coil sensor=9.8 MΩ]
        resistance | C to R 1.5, C to S 3.2, R to S 4.7 => ASK no-unit [C-R=1.5 Ω; C-S=3.2 Ω; R-S=4.7 Ω | C-R=1.5 kΩ; C-S=3.2 kΩ; R-S=4.7 kΩ | C-R=1.5 MΩ; C-S=3.2 MΩ; R-S=4.7 MΩ]
        resistance | C-R 1.5 C-S 3.2 R-S 4.7 ohms => C-R=1.5 Ω; C-S=3.2 Ω; R-S=4.7 Ω
        resistance | common to start 3.2 ohms => common-start=3.2 Ω
        resistance | black to white 12 ohms, black to red 15 ohms => black-white=12 Ω; black-red=15 Ω
        """);

    [Theory]
    [MemberData(nameof(Messages))]
    public void Parse_ResistanceMessage_IsTakenAsMeant(string context, string message, string expected) =>
        Assert.Equal(expected, ReadingTable.Show(ReadingParser.Parse(message, ReadingTable.Context(context))));
}
