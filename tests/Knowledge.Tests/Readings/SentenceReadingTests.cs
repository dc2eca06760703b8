using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Readings;

public sealed class SentenceReadingTests
{
    // As technicians type and dictate: sentences, nothing asked. What each is taken for follows from the rules on ReadingParser.
    public static TheoryData<string, string, string> Messages => ReadingTable.Of(
        """
        - | 2.1k => 2.1 kΩ
        - | 2,1 k => 2.1 kΩ
        - | 1,200 V => ASK separator [1.2 V | 1200 V]
        - | 1,234.5 V => 1234.5 V
        - | 1.234,5 V => 1234.5 V
        - | twenty four degrees celsius => 24 °C
        - | U-V 1.1, V-W 1.2, U-W 1.1 ohms => U-V=1.1 Ω; V-W=1.2 Ω; U-W=1.1 Ω
        - | R to S 1.1 S to T 1.2 R to T 1.1 ohms => R-S=1.1 Ω; S-T=1.2 Ω; R-T=1.1 Ω
        - | suction 118 psi at 52F => suction=118 psi; 52 °F
        - | OL => OPEN
        - | ∞ => OPEN
        - | I'm getting about 10.2k on the room sensor, it's 72 in here => room sensor=10.2 kΩ; room=72 °F
        - | 10.2k at 24 => 10.2 kΩ ?? ASK no-unit [24 °C | 24 °F]
        - | 24 => ASK no-unit []
        - | code E5 => NONE no-reading
        - | swapped 2 boards => NONE no-reading
        - | b4 showing and it reads 2.1k at 24C => 2.1 kΩ; 24 °C
        - | room sensor unplugged, 2.1k at 24C, code b4 => 2.1 kΩ; 24 °C
        - | model AB-12X9 from 3/12/2024 => NONE no-reading
        - | 45 micro farad => 45 µF
        - | charged with 410a => NONE no-reading
        - | R-410A system 118 psig => 118 psig
        - | should be 10k but reads 8.2k => 8.2 kΩ
        - | 10k sensor reads 8.2k => 8.2 kΩ
        - | 8.2k vs 10k => ASK which-one [8.2 kΩ | 10 kΩ]
        - | 24.5.1 => NONE no-reading
        - | at 10:30 it was 24C => 24 °C
        - | short cycling on code 5C => NONE no-reading
        - | 24C => 24 °C
        - | 75 F => 75 °F
        - | 75 deg F => 75 °F
        - | 75 degrees fahrenheit => 75 °F
        - | 75 farenheit => 75 °F
        - | 75 degrees => ASK which-unit [75 °C | 75 °F]
        - | room temp 75 => room=75 °F
        - | outdoor 35C indoor 24C => outdoor=35 °C; indoor=24 °C
        - | supply 55F return 75F => supply=55 °F; return=75 °F
        - | 55F supply, 75F return => supply=55 °F; return=75 °F
        - | superheat 12F => superheat=12 °F
        - | suction line 52F, 118 psi => suction=52 °F; 118 psi
        - | suction 118 discharge 350 psi => suction=118 psi; discharge=350 psi
        - | weighed in 3 lb of 410A => NONE no-reading
        - | 3.5 lbs charge => NONE no-reading
        - | compressor pulling 8.2A, fan .35A => compressor=8.2 A; fan=0.35 A
        - | 60 Hz => 60 Hz
        - | rpm 850 => 850 r/min
        - | 850 rpm => 850 r/min
        - | 45% humidity => 45 %
        - | 5 minutes => NONE no-reading
        - | ran for 5 minutes then 24C => 24 °C
        - | 3 ton unit, 12 SEER => NONE no-reading
        - | 24000 btu unit => NONE no-reading
        - | 24k unit => NONE only-expected
        - | swapped the board 2 times => NONE no-reading
        - | installed in 2019 => NONE only-expected
        - | installed May 5 => NONE only-expected
        - | May 5 2024 => NONE no-reading
        - | 2024-05-01 118 psi => 118 psi
        - | on 5/12/2024 it read 10.2k => 10.2 kΩ
        - | call me at 555-010-1234 => NONE no-reading
        - | serial 12345678 => NONE no-reading
        - | error 21 => NONE no-reading
        - | E5 => NONE no-reading
        - | E 5 => NONE no-reading
        - | blinks 5 times => NONE no-reading
        - | code 5C => NONE no-reading
        - | display shows 5C => ASK unsure [5 °C]
        - | it shows F1 and 24C => 24 °C
        - | H6 flashing 3 times => NONE no-reading
        - | L1 => NONE no-reading
        - | p0 => NONE no-reading
        - | step 3 => NONE no-reading
        - | pin 3 to pin 4 reads 5V => 5 V
        - | pins 3 and 4: 5V => 5 V
        - | CN5 pin 1 reads 12.1 VDC => pin 1=12.1 V
        - | zone 2 is 75F => zone 2=75 °F
        - | head 2 shows 24C => head=24 °C
        - | sensor 2 reads 10.2k => sensor 2=10.2 kΩ
        - | thermistor 10k at 25C => 10 kΩ; 25 °C
        - | 10k thermistor => NONE only-expected
        - | I have a 230V unit with 24V control => NONE only-expected
        - | fuse is 3A => NONE only-expected
        - | 20A breaker => NONE only-expected
        - | 120/240V panel => ASK which-one [120 V | 240 V]
        - | spec is 10k => NONE only-expected
        - | spec 10k, measured 8.2k => 8.2 kΩ
        - | reads 8.2k, should be 10k => 8.2 kΩ
        - | supposed to be 10k, getting OL => OPEN
        - | should it be open? => NONE no-reading
        - | what should it read at 24C => NONE only-expected
        - | if it's below 5k replace it => NONE only-expected
        - | 10k no wait 8k => ASK which-one [10 kΩ | 8 kΩ]
        - | 10k then dropped to 8k => ASK which-one [10 kΩ | 8 kΩ]
        - | before 10k after 8k => 8 kΩ
        - | went from 240 to 208 volts => ASK range [240 V | 208 V]
        - | 10k ± 5% => 10 kΩ
        - | 10k plus or minus 5 percent => 10 kΩ
        - | 10k +/- 0.5k => 10 kΩ
        """);

    [Theory]
    [MemberData(nameof(Messages))]
    public void Parse_SentenceMessage_IsTakenAsMeant(string context, string message, string expected) =>
        Assert.Equal(expected, ReadingTable.Show(ReadingParser.Parse(message, ReadingTable.Context(context))));
}
