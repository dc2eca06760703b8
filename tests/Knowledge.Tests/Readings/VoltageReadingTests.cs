using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Readings;

public sealed class VoltageReadingTests
{
    // As technicians type and dictate: volts.
    // What each is taken for follows from the rules on ReadingParser.
    public static TheoryData<string, string, string> Messages => ReadingTable.Of(
        """
        voltage | 280 vdc dropped to 20 => ASK which-one [280 V | 20 V]
        voltage | dropped to 20 => 20 V
        diode drop | 450 => ASK impossible [450 mV]
        diode drop | 0.45 => 0.45 V
        diode drop | 450 mV => 450 mV
        volts | 1,200 V => 1.2 V
        voltage | one hundred and twenty => 120 V
        voltage | one twenty => 120 V
        voltage | two oh eight => 208 V
        voltage | two thirty => 230 V
        voltage | two hundred thirty volts => 230 V
        voltage | four eighty volts => 480 V
        voltage | L1 118 L2 121 => L1=118 V; L2=121 V
        voltage | 0 V => 0 V
        voltage | 208/230 => ASK which-one [208 V | 230 V]
        voltage | 118/121 => ASK which-one [118 V | 121 V]
        voltage | 230 231 229 => 230 V; 231 V; 229 V
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
        voltage | 230 votls => NONE no-reading
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
        voltage | one one eight => 118 V
        voltage | two forty => 240 V
        voltage | two forty one => 241 V
        voltage | a hundred twenty => 120 V
        voltage | one hundred twenty volts AC => 120 V
        voltage | 120 vac between black and white => black-white=120 V
        voltage | 120 black to white => black-white=120 V
        voltage | L1-N 121, L2-N 119, L1-L2 240 => L1-N=121 V; L2-N=119 V; L1-L2=240 V
        voltage | L1 to N 121 L2 to N 119 => L1-N=121 V; L2-N=119 V
        voltage | l1 to ground 120 => L1-ground=120 V
        voltage | line 1 121 line 2 119 => L1=121 V; L2=119 V
        voltage | hot to neutral 120 => ASK unsure [120 V]
        voltage | hot to ground 120, neutral to ground 0.3 => ASK unsure [120 V | neutral-ground=0.3 V]
        voltage | 24.3 at the board => ASK unsure [24.3 V]
        voltage | 24.3v at the board, 0 at the contactor => ASK unsure [24.3 V; 0 V]
        voltage | nothing, 0 volts => 0 V
        voltage | 0.02 V => 0.02 V
        voltage | less than 1 volt => ASK limit [1 V]
        voltage | 50 millivolts => 50 mV
        voltage | 5.01 volts dc on pin 1, 0 on pin 2 => pin 1=5.01 V; pin 2=0 V
        voltage | pin 1 5.01 V pin 2 0 V => pin 1=5.01 V; pin 2=0 V
        voltage | pin1 5V, pin2 12V => ASK which-one [5 V | 12 V]
        voltage | 5 v between pins 1 and 3 => 5 V
        voltage | 12.1 VDC at CN5 pins 1-2 => 12.1 V
        voltage | 12 volts => 12 V
        voltage | 12v dc => 12 V
        voltage | 12 V.D.C. => 12 V
        voltage | 12 V D C => 12 V
        voltage | DC 12 => 12 V
        voltage | DC 12V => 12 V
        voltage | V 12 => ASK unsure [12 V]
        voltage | 310-320 vdc => ASK range [310 V | 320 V]
        voltage | it swings 10 to 40 volts => ASK range [10 V | 40 V]
        voltage | pulsing 12 to 24V => ASK range [12 V | 24 V]
        voltage | voltage is 208.4 => 208.4 V
        voltage | 208.4 208.9 207.6 => 208.4 V; 208.9 V; 207.6 V
        voltage | 208.4/208.9/207.6 => 208.4 V; 208.9 V; 207.6 V
        voltage | 480Y/277 => ASK unsure [277 V]
        voltage | 277 => 277 V
        voltage | 230 volts 1 phase => 230 V
        voltage | 230v single phase => 230 V
        voltage | 208-230V => ASK range [208 V | 230 V]
        voltage | 230V/1/60 => ASK unsure [230 V; 1 V; 60 V]
        voltage | 240v 30a circuit => 240 V
        voltage | breaker is 30 amp, I have 240 volts => 240 V
        voltage | 30A breaker, 240V at the disconnect => 240 V
        voltage | supply 240, bus 338 => supply=240 V; bus=338 V
        voltage | 240 coming in => NONE no-reading
        voltage | getting two hundred and forty point two volts => 240.2 V
        voltage | 2 hundred 40 => 240 V
        voltage | 240v but it drops to 190 when it starts => ASK unsure [240 V; 190 V]
        voltage | drops to 190 on start => ASK unsure [190 V]
        voltage | 240 idle 236 running => NONE no-reading
        voltage | 1.5 volts less than nameplate => ASK unsure [1.5 V]
        voltage | 2V low => ASK unsure [2 V]
        voltage | 10% low => ASK unsure [10 %]
        voltage | off by 2 volts => ASK unsure [2 V]
        voltage | 120 plus => ASK limit [120 V]
        voltage | one twenty plus or minus 2 => ASK unsure [120 V]
        voltage | 1 20 => ASK which-one [1 V | 20 V]
        voltage | 12 0 => ASK which-one [12 V | 0 V]
        voltage | 2 40 => ASK which-one [2 V | 40 V]
        voltage | 2 3 0 => ASK which-one [2 V | 3 V | 0 V]
        voltage | 230.0. => 230 V
        voltage | 230,0 => 230 V
        voltage | 230,5V => 230.5 V
        voltage | 2,30 V => 2.3 V
        voltage | 230 V~ => 230 V
        voltage | ~230V => 230 V
        voltage | ≈230 V => 230 V
        voltage | ≈ 230 => 230 V
        voltage | =230 => 230 V
        voltage | -> 230 => ASK limit [230 V]
        voltage | 230 -> ok => 230 V
        voltage | U=230V => 230 V
        voltage | U 230 V => 230 V
        voltage | V=230 => ASK unsure [230 V]
        voltage | Vdc 310 => 310 V
        voltage | VDC: 310 => 310 V
        voltage | volts 230 => 230 V
        voltage | my meter says 230 volts but yours says 240 => ASK which-one [230 V | 240 V]
        voltage | CAT III 600V meter, reads 230 => ASK which-one [600 V | 230 V]
        voltage | 600V tester reads 230 => ASK which-one [600 V | 230 V]
        voltage | 230 volts on a 230 volt circuit => 230 V
        voltage | is 230 in range => 230 V
        voltage | yes 230 => 230 V
        voltage | no, 230 => ASK unsure [230 V]
        voltage | not 240, 230 => ASK unsure [230 V]
        voltage | 230 sorry 240 => ASK unsure [240 V]
        voltage | 230 I mean 240 => ASK unsure [230 V; 240 V]
        voltage | wait 240 => ASK unsure [240 V]
        voltage | 231 and it should be 230 => ASK unsure [231 V]
        volts | 1,200 => 1.2 V
        volts | 12,00 => 12 V
        volts | 120,5 => 120.5 V
        volts | 1.205 => 1.205 V
        volts | 230.125 => 230.125 V
        volts | 230,125 => ASK separator [230.125 V]
        volts | 1230 => ASK impossible [1230 mV]
        volts | 700 => ASK impossible [700 mV]
        volts | 0.5 => 0.5 V
        volts | 500 mV => 500 mV
        volts | 1.2k => ASK which-unit [1.2 kΩ]
        volts | 0,230 kV => 0.23 kV
        volts | 23O => NONE no-reading
        volts | 2З0 => NONE no-reading
        volts | ２３０ => 230 V
        volts | 230 Volt => 230 V
        volts | 230 Volts AC RMS => 230 V
        volts | 230 vrms => 230 V
        volts | 230 V rms => 230 V
        volts | 230 vAC => 230 V
        volts | 230 V-AC => 230 V
        volts | 230V/ => 230 V
        volts | /230V => 230 V
        volts | [230 V] => 230 V
        volts | "230" => 230 V
        volts | *230* => 230 V
        volts | 230 🙂 => 230 V
        volts | 👍 230 => 230 V
        volts | 230😀V => ASK unsure [230 V]
        volts | 230 v ac 5.1 a => 230 V; 5.1 A
        volts | 230V 5.1A 60Hz => 230 V; 5.1 A; 60 Hz
        volts | 230V @ 5.1A => 230 V; 5.1 A
        volts | 1 2 3 => ASK which-one [1 V | 2 V | 3 V]
        volts | 2 hundred => 200 V
        volts | 1e2 => NONE no-reading
        volts | 1.5e2 V => 150 V
        volts | 1e999 V => NONE no-reading
        volts | 999999999999999999999999999999 V => ASK impossible []
        volts | NaN => NONE no-reading
        volts | infinity => ASK unsure [OPEN]
        volts | 0x10 => NONE no-reading
        volts | ١٢٠ => NONE no-reading
        volts | twelve => 12 V
        volts | a dozen => NONE no-reading
        volts | twelve oh eight => NONE no-reading
        volts | two two => NONE no-reading
        volts | one one => NONE no-reading
        volts | two zero eight => 208 V
        volts | two oh eight point four => 208.4 V
        volts | two thirty point five => 230.5 V
        volts | two hundred eight point four volts => 208.4 V
        volts | twenty-four volts => 24 V
        volts | twenty four point six vac => 24.6 V
        volts | 24 point 6 => 24.6 V
        volts | twenty for => ASK unsure [20 V]
        voltage | twelve volts DC => 12 V
        voltage | a hundred => 100 V
        voltage | a hundred and ten => 110 V
        voltage | one ten => 110 V
        voltage | one ten point five => 110.5 V
        voltage | two twenty => 220 V
        voltage | two twenty volts => 220 V
        voltage | I measured 208 between L1 and L2, 207 between L2 and L3 and 209 between L1 and L3 => L1-L2=208 V; L2-L3=207 V; L1-L3=209 V
        voltage | L1-L2: 208V; L2-L3: 207V; L3-L1: 209V => L1-L2=208 V; L2-L3=207 V; L3-L1=209 V
        voltage | phase A 120 phase B 118 => ASK unsure [118 V]
        voltage | line voltage is 230 and control voltage is 24 => ASK which-one [230 V | 24 V]
        voltage | 24 volts at the transformer, 0 volts at the contactor => ASK which-one [24 V | 0 V]
        voltage | 24 and change => ASK unsure [24 V]
        voltage | 20-something volts => ASK unsure [20 V]
        voltage | down 10 volts => ASK unsure [10 V]
        voltage | down to 10 volts => 10 V
        voltage | up to 250 volts => 250 V
        voltage | up 5 volts => ASK unsure [5 V]
        voltage | 2 volt drop => ASK unsure [2 V]
        voltage | half of 230 => ASK unsure [230 V]
        voltage | 2 x 115 V => ASK unsure [115 V]
        """);

    [Theory]
    [MemberData(nameof(Messages))]
    public void Parse_VoltageMessage_IsTakenAsMeant(string context, string message, string expected) =>
        Assert.Equal(expected, ReadingTable.Show(ReadingParser.Parse(message, ReadingTable.Context(context))));
}
