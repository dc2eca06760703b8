using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Readings;

public sealed class ReportReadingTests
{
    // As technicians type and dictate: reports of the job, °F and psi.
    // What each is taken for follows from the rules on ReadingParser.
    public static TheoryData<string, string, string> Messages => ReadingTable.Of(
        """
        us | I'm getting about 10.2k on the room sensor, it's 72 in here => room sensor=10.2 kΩ; room=72 °F
        us | outdoor 95 indoor 72 => outdoor=95 °F; indoor=72 °F
        us | delta T 20 => 20 °F
        us | suction 118 and head 350 => ASK no-unit []
        us | 118 over 350 => NONE no-reading
        us | 118/350 psi => ASK which-one [118 psi | 350 psi]
        us | pressures are 118 and 350 => ASK no-unit []
        us | suction's at 118 psig and the liquid is 350 psig => suction=118 psig; liquid=350 psig
        us | 118 psig low side 350 psig high side => low side=118 psig; high side=350 psig
        us | low side 118 psi high side 350 psi => low side=118 psi; high side=350 psi
        us | low side 118, high side 350 psi => low side=118 psi; high side=350 psi
        us | suction pressure 118 psi, suction temp 52F => suction=118 psi; suction=52 °F
        us | 118 psi 52F suction, 350 psi 95F liquid => suction=52 °F; liquid=95 °F ?? ASK which-one [118 psi | 350 psi]
        us | suction 118 psi / 52 F, liquid 350 psi / 95 F => suction=118 psi; liquid=350 psi ?? ASK which-one [52 °F | 95 °F]
        us | 118psig@52F => 118 psig; 52 °F
        us | 118 psig at 52 degrees => 118 psig; 52 °F
        us | 118 psig at 52 degrees F, superheat 12 => 118 psig; 52 °F; superheat=12 °F
        us | superheat 12 subcool 8 => superheat=12 °F; subcool=8 °F
        us | SH 12 SC 8 => NONE no-reading
        us | sub cooling of 8 degrees => 8 °F
        us | 8 degrees of subcooling => subcooling=8 °F
        us | 12F superheat => superheat=12 °F
        us | 12° of superheat => superheat=12 °F
        us | delta t is 18 => 18 °F
        us | 18F delta => 18 °F
        us | 18 degree delta T => 18 °F
        us | TD of 20 => 20 °F
        us | 20 degree TD => 20 °F
        us | dropped 20 degrees => ASK unsure [20 °F]
        us | temp split 18F => 18 °F
        us | return 75F supply 55F split 20F => return=75 °F; supply=55 °F; 20 °F
        us | weighed in 2 lb 4 oz => NONE no-reading
        us | charge is 1.1 kg => NONE no-reading
        us | added 6 oz => NONE no-reading
        us | room is 74 and outside is 95 => room=74 °F; outdoor=95 °F
        us | 74 inside, 95 outside => indoor=74 °F; outdoor=95 °F
        us | 95 degrees outside => outdoor=95 °F
        us | it's 95 out here => outdoor=95 °F
        us | 95F ambient, 118 psi, 350 psi => ambient=95 °F; 118 psi; 350 psi
        us | 45 uf cap reads 38.2 uf => 38.2 µF
        us | 45/5 cap reads 44.1 and 4.8 => ASK no-unit []
        us | capacitor is 38 mfd rated 45 => 38 µF
        us | 38.2 mfd, rated 45 mfd => 38.2 µF
        us | rated 45 reads 38.2 mfd => 38.2 µF
        us | compressor amps 8.2 => compressor=8.2 A
        us | 8.2 amps RLA is 10.5 => 8.2 A
        us | RLA 10.5 LRA 58 reading 8.2 amps => 8.2 A
        us | amp draw 8.2 => NONE no-reading
        us | fan draws .45 amps => fan=0.45 A
        us | inrush 42 amps running 8.2 => ASK unsure [42 A]
        us | locked rotor 42 amps => 42 A
        us | 500 microns and holding => 500 micron
        us | vacuum down to 480 microns rose to 900 => ASK unsure [480 micron]
        us | held at 480 microns for 10 minutes => 480 micron
        us | nitrogen 500 psi holding for 24 hours => 500 psi
        us | 500 psi nitrogen test lost 2 psi overnight => ASK which-one [500 psi | 2 psi]
        us | static .5 in wc => 0.5 inH₂O
        us | 0.5" wc => 0.5 inH₂O
        us | .5 inches of water column => 0.5 inH₂O
        us | 350 cfm => 350 cfm
        us | airflow about 350 cfm => 350 cfm
        us | 412 m³/h => 412 m³/h
        us | 412 m3/h at the grilles => 412 m³/h
        us | 6.9 m3/min => 6.9 m³/min
        us | airflow 412 cubic meters per hour => 412 m³/h
        us | 95 l/s => 95 L/s
        us | fan rpm 850 => fan=850 r/min
        us | 850rpm => 850 r/min
        us | 60hz => 60 Hz
        us | 59.9 Hz => 59.9 Hz
        us | line frequency 60 hertz => 60 Hz
        us | humidity 55% => 55 %
        us | 55% rh => 55 %
        us | 55 percent => 55 %
        us | battery is at 55% => 55 %
        us | duty cycle 55% => 55 %
        us | EEV at 250 steps => NONE no-reading
        us | EEV 250 pulses => NONE no-reading
        us | compressor at 45 hz => compressor=45 Hz
        us | runs at 1,200 rpm => ASK separator [1.2 r/min | 1200 r/min]
        us | resistance 1.2 ohm at 20 °C => 1.2 Ω; 20 °C
        us | thermistor reads 6.53k at 95F => 6.53 kΩ; 95 °F
        us | unplugged the thermistor, got 6.53k, about 95 out => 6.53 kΩ; outdoor=95 °F
        us | R to Y 24v => 24 V
        us | 24v R to C => R-C=24 V
        us | 24 V between R and C => R-C=24 V
        us | 24v on Y => 24 V
        us | 12V on pin 1, 5V on pin 2 => pin 1=12 V; pin 2=5 V
        us | pin 1 12V pin 2 5V => pin 1=12 V; pin 2=5 V
        us | U to V 1.1, V to W 1.1, U to W 1.1 ohms, all OL to ground => ASK which-one [U-V=1.1 Ω | V-W=1.1 Ω | U-W=1.1 Ω | OPEN]
        us | U-V 1.1 ohms V-W 1.1 ohms W-U 1.1 ohms U-G OL => U-V=1.1 Ω; V-W=1.1 Ω; W-U=1.1 Ω; U-G=OPEN
        us | E5 code, 10.2k on the room sensor, 118 psi suction => room sensor=10.2 kΩ; suction=118 psi
        us | code E5. room sensor 10.2k. 24.5C in room. => room sensor=10.2 kΩ; room=24.5 °C
        us | unit model AB24X serial 4H2291, E5, 10.2k => 10.2 kΩ
        us | 2 ton R-410A unit showing E5, suction 118, 95 out => ASK no-unit [outdoor=95 °F]
        us | 24,000 BTU unit 230V 1 phase => 230 V
        us | hi I'm at 1200 main street with a unit showing H6 => NONE no-reading
        us | ticket 48213 => NONE no-reading
        us | we have 12 units at 5 sites => NONE no-reading
        us | installed 3 years ago, 2 boards replaced => NONE only-expected
        us | job 2024-118 => NONE no-reading
        us | room 24 => ASK no-unit [room=24 °C | room=24 °F]
        us | suite 120 => NONE no-reading
        us | unit 24 => NONE no-reading
        us | 45 minute drive => NONE no-reading
        us | it takes 10 minutes to heat 2 degrees => ASK unsure [2 °F]
        us | goes off after 5 min => NONE no-reading
        us | the customer says 72 but it's 78 => ASK no-unit []
        us | set at 70 reads 76 => ASK no-unit []
        us | set to 70F and it's 76F => 76 °F
        us | filter is 16x20 => NONE no-reading
        us | 16x20x1 => NONE no-reading
        us | 3/8 line => NONE no-reading
        us | 1/4 and 3/8 lineset => NONE no-reading
        us | 25 ft lineset => NONE no-reading
        us | 25' lineset 3/8 x 5/8 => NONE no-reading
        us | 14 AWG => NONE no-reading
        us | 14-4 cable => NONE no-reading
        us | 2 wires black and red => NONE no-reading
        us | 3 of 5 screws => NONE no-reading
        us | tried twice => NONE no-reading
        us | first floor => NONE no-reading
        us | 100% sure => NONE no-reading
        us | A/C => NONE no-reading
        us | 5-10 minutes => NONE no-reading
        us | 10 to 15 psi low => ASK range [10 psi | 15 psi]
        us | 10 psi too high => ASK unsure [10 psi]
        us | within 2 degrees => NONE only-expected
        us | off by 5F => ASK unsure [5 °F]
        us | 5F higher than room => ASK unsure [room=5 °F]
        us | 24V transformer => NONE only-expected
        us | 24 V transformer output 26.1 V => 26.1 V
        us | transformer 26.1 V secondary 238 V primary => ASK which-one [26.1 V | 238 V]
        us | 10k NTC => NONE only-expected
        us | 10k type 3 => 10 kΩ
        us | 10k@25 => 10 kΩ ?? ASK no-unit [25 °C | 25 °F]
        us | B25/85 3435 => NONE no-reading
        us | error 21 / 24V => 24 V
        us | H6 and 24V => 24 V
        us | P0 24C => 24 °C
        us | 0.0 => ASK no-unit []
        us | OL => OPEN
        us | - => NONE no-reading
        us | --- => NONE no-reading
        us | . => NONE no-reading
        us | , => NONE no-reading
        us | 1.2.3 => NONE no-reading
        us | 12:30 => NONE no-reading
        us | #4 => NONE no-reading
        us | no. 4 => NONE no-reading
        us | 4th => NONE no-reading
        us | 4x => NONE no-reading
        us | x4 => NONE no-reading
        us | suction 118 psi at 52F liquid 350 psi at 95F => suction=118 psi; 52 °F; liquid=350 psi; 95 °F
        us | 118 psi 52F suction 350 psi 95F liquid => suction=52 °F; liquid=95 °F ?? ASK which-one [118 psi | 350 psi]
        us | L1 118V 5.2A L2 121V 5.4A => L1=118 V; L2=121 V ?? ASK which-one [5.2 A | 5.4 A]
        """);

    [Theory]
    [MemberData(nameof(Messages))]
    public void Parse_ReportMessage_IsTakenAsMeant(string context, string message, string expected) =>
        Assert.Equal(expected, ReadingTable.Show(ReadingParser.Parse(message, ReadingTable.Context(context))));
}
