using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Readings;

public sealed class FormReadingTests
{
    // As technicians type and dictate: forms with lines of several kinds.
    // What each is taken for follows from the rules on ReadingParser.
    public static TheoryData<string, string, string> Messages => ReadingTable.Of(
        """
        room-sensor | 10.2k at 24C => resistance=10.2 kΩ; temperature=24 °C
        room-sensor | 10.2 at 24 => resistance=10.2 kΩ; temperature=24 °C
        room-sensor | 10.2k at 24 => resistance=10.2 kΩ; temperature=24 °C
        room-sensor | 10.2, 24 => resistance=10.2 kΩ; temperature=24 °C
        room-sensor | 10.2k => resistance=10.2 kΩ
        room-sensor | 10.2 => ASK which-one [resistance=10.2 kΩ | temperature=10.2 °C]
        room-sensor | 24C => temperature=24 °C
        room-sensor | 10.2k and it's 24 degrees => resistance=10.2 kΩ; temperature=24 °C
        room-sensor | room sensor 10.2k room is 24 => resistance=10.2 kΩ; temperature=24 °C
        room-sensor | room sensor 10.2k, 24 in here => resistance=10.2 kΩ; temperature=24 °C
        room-sensor | resistance 10.2 temperature 24 => resistance=10.2 kΩ; temperature=24 °C
        room-sensor | OL at 24C => resistance=OPEN; temperature=24 °C
        room-sensor | OL => resistance=OPEN
        room-sensor | open, 24C => resistance=OPEN; temperature=24 °C
        room-sensor | temperature 24 resistance 10.2 => temperature=24 °C; resistance=10.2 kΩ
        room-sensor | 10.2k 24C => resistance=10.2 kΩ; temperature=24 °C
        room-sensor | 24C 10.2k => temperature=24 °C; resistance=10.2 kΩ
        room-sensor | it's 24 => ASK which-one [resistance=24 kΩ | temperature=24 °C]
        room-sensor-us | 10.2k at 75 => resistance=10.2 kΩ; temperature=75 °F
        room-sensor-us | 10.2k at 75F => resistance=10.2 kΩ; temperature=75 °F
        room-sensor-us | 10.2 at 75 => resistance=10.2 kΩ; temperature=75 °F
        room-sensor-us | 10.2k at 24 => resistance=10.2 kΩ ?? ASK no-unit [temperature=24 °C | temperature=24 °F]
        room-sensor-us | 10.2, 75 => resistance=10.2 kΩ; temperature=75 °F
        room-sensor-us | 10.2k, 72 in here => resistance=10.2 kΩ; temperature=72 °F
        room-sensor-us | resistance 10.2 temperature 75 => resistance=10.2 kΩ; temperature=75 °F
        room-sensor-us | 75 => ASK which-one [resistance=75 kΩ | temperature=75 °F]
        room-sensor-us | temp is 75 => temperature=75 °F
        room-sensor-us | 10.2k at 150 => resistance=10.2 kΩ ?? ASK impossible []
        superheat-form | suction 800 kpa pipe 8C => Suction=800 kPa; Suction pipe=8 °C
        superheat-form | 800 and 8 => Suction=800 kPa; Suction pipe=8 °C
        superheat-form | 800 kpa at 8C => Suction=800 kPa; Suction pipe=8 °C
        superheat-form | 8 bar, 8 C => Suction=8 bar; Suction pipe=8 °C
        superheat-form-us | 118 psi at 52F => Suction=118 psi; Suction pipe=52 °F
        superheat-form-us | 118 at 52 => Suction=118 psi; Suction pipe=52 °F
        superheat-form-us | 118 52 => Suction=118 psi; Suction pipe=52 °F
        superheat-form-us | 118 psig, pipe temp 52 => Suction=118 psig; Suction pipe=52 °F
        superheat-form-us | suction 118 suction pipe 52 => Suction=118 psi; Suction pipe=52 °F
        superheat-form-us | suction 118 psi, suction line 52F => Suction=118 psi; Suction pipe=52 °F
        superheat-form-us | 118 psi => Suction=118 psi
        superheat-form-us | 52F => Suction pipe=52 °F
        superheat-form-us | 118 => ASK which-one [Suction=118 psi | Suction pipe=118 °F]
        superheat-form-us | suction 118 psi at 52F => Suction=118 psi; Suction pipe=52 °F
        split-us | return 72 supply 54 => Return air=72 °F; Supply air=54 °F
        split-us | 72 54 => Return air=72 °F; Supply air=54 °F
        split-us | 72 return 54 supply => Return air=72 °F; Supply air=54 °F
        split-us | 72 and 54 => Return air=72 °F; Supply air=54 °F
        split-us | supply is 54F return 72F => Supply air=54 °F; Return air=72 °F
        split-us | 75 in 57 out => Return air=75 °F; Supply air=57 °F
        split-us | 75 in, 57 out => Return air=75 °F; Supply air=57 °F
        split-us | 26C going in 18C coming out => Return air=26 °C; Supply air=18 °C
        split-us | 24C return, 13 supply => Return air=24 °C; Supply air=13 °C
        split | 75 57 => Return air=75 °F; Supply air=57 °F
        split | return 75 supply 57 => Return air=75 °F; Supply air=57 °F
        split | 75 in 57 out => Return air=75 °F; Supply air=57 °F
        split | 26 in 17.5 out => Return air=26 °C; Supply air=17.5 °C
        split | return 200 supply 57 => ASK impossible []
        bend | 35 out air, 58C bend => Outdoor air=35 °C; Middle bend=58 °C
        bend | 95F ambient, bend 136F => Outdoor air=95 °F; Middle bend=136 °F
        legs | L1-L2 240, L1-gnd 120, L2-gnd 121 => L1–L2=240 V; L1–ground=120 V; L2–ground=121 V
        legs | L1-G 119, L2-G 120, L1-L2 239 => L1–ground=119 V; L2–ground=120 V; L1–L2=239 V
        legs | 119/120/239 => ASK unsure [L1–L2=239 V; L1–ground=119 V; L2–ground=120 V]
        legs | 0, 120, 120 => L1–L2=0 V; L1–ground=120 V; L2–ground=120 V
        high-side-us | head 350 psig, ambient 95F => High side=350 psig; Outdoor air=95 °F
        superheat-form-us | low side 118 psig, pipe 52F => Suction=118 psig; Suction pipe=52 °F
        superheat-form | 24 K superheat => superheat=24 K
        room-sensor | superheat 18K => superheat=18 K
        split-us | 72/54 => Return air=72 °F; Supply air=54 °F
        split-us | 54 => ASK which-one [Return air=54 °F; Supply air=54 °F | Return air=54 °F | Supply air=54 °F]
        high-side-us | 350 psi 95F => High side=350 psi; Outdoor air=95 °F
        high-side-us | head 350 psi outdoor 95 => High side=350 psi; Outdoor air=95 °F
        high-side-us | 350 psi, 95 out => High side=350 psi; Outdoor air=95 °F
        high-side-us | high side 350, outdoor air 95 => High side=350 psi; Outdoor air=95 °F
        high-side-us | 350 95 => High side=350 psi; Outdoor air=95 °F
        high-side-us | indoor 72F, 350 psi => indoor=72 °F; High side=350 psi
        bus | supply 240 bus 338 => Supply=240 V; DC bus=338 V
        bus | 240 338 => Supply=240 V; DC bus=338 V
        bus | 240 and 338 => Supply=240 V; DC bus=338 V
        bus | 240V, dc bus 338V => Supply=240 V; DC bus=338 V
        bus | 338 on the bus => DC bus=338 V
        bus | 240 in 338 on the bus => Supply=240 V; DC bus=338 V
        legs | 240 120 120 => L1–L2=240 V; L1–ground=120 V; L2–ground=120 V
        legs | L1-L2 240, L1-ground 120, L2-ground 121 => L1–L2=240 V; L1–ground=120 V; L2–ground=121 V
        legs | L1 to L2 240 L1 to ground 120 L2 to ground 121 => L1–L2=240 V; L1–ground=120 V; L2–ground=121 V
        legs | L1-L2 240 => L1–L2=240 V
        diodes | all 0.45 => P–U=0.45 V; P–V=0.45 V; P–W=0.45 V; N–U=0.45 V; N–V=0.45 V; N–W=0.45 V
        diodes | .45 .45 .46 .45 .45 .46 => P–U=0.45 V; P–V=0.45 V; P–W=0.46 V; N–U=0.45 V; N–V=0.45 V; N–W=0.46 V
        diodes | P-U .45 P-V .45 P-W .46 N-U .45 N-V .45 N-W OL => P–U=0.45 V; P–V=0.45 V; P–W=0.46 V; N–U=0.45 V; N–V=0.45 V; N–W=OPEN
        diodes | 0.45 on all six => P–U=0.45 V; P–V=0.45 V; P–W=0.45 V; N–U=0.45 V; N–V=0.45 V; N–W=0.45 V
        diodes | all six .45 => P–U=0.45 V; P–V=0.45 V; P–W=0.45 V; N–U=0.45 V; N–V=0.45 V; N–W=0.45 V
        signal | 0 and 24 => lowest signal=0 V; highest signal=24 V
        signal | between 0 and 24 => ASK range [lowest signal=0 V | highest signal=24 V]
        signal | 0 to 24 => ASK range [lowest signal=0 V | highest signal=24 V]
        signal | lowest 0 highest 24 => lowest signal=0 V; highest signal=24 V
        signal | low 0 high 24 => lowest signal=0 V; highest signal=24 V
        signal | swings 0 to 24 volts => ASK range [lowest signal=0 V | highest signal=24 V]
        signal | min -12 max 24 => lowest signal=-12 V; highest signal=24 V
        megger | 500 => 500 MΩ
        megger | >500 => ASK limit [500 MΩ]
        megger | OL => Winding to shell=OPEN
        megger | 500 meg => Winding to shell=500 MΩ
        megger | over 1000 => ASK limit [1000 MΩ]
        megger | 0.5 => 0.5 MΩ
        megger | 500k => Winding to shell=500 kΩ
        megger | 2 gig => Winding to shell=2 GΩ
        megger | 550 M => Winding to shell=550 MΩ
        megger | 550 m => ASK which-unit [Winding to shell=550 MΩ | Winding to shell=550 mΩ]
        megger | 5 => 5 MΩ
        megger | infinite => Winding to shell=OPEN
        pipe-us | 180 => 180 °F
        pipe-us | 180F => Discharge pipe=180 °F
        pipe-us | 82C => Discharge pipe=82 °C
        pipe-us | 82 => 82 °F
        pipe-us | discharge pipe is 180 => Discharge pipe=180 °F
        pipe-us | suction 52F => suction=52 °F
        celsius-field-us | 75 => ASK no-unit [75 °C | 75 °F]
        celsius-field-us | 24 => ASK no-unit [24 °C | 24 °F]
        celsius-field-us | 24 degrees => ASK which-unit [24 °C | 24 °F]
        celsius-field-us | 24C => 24 °C
        """);

    [Theory]
    [MemberData(nameof(Messages))]
    public void Parse_FormMessage_IsTakenAsMeant(string context, string message, string expected) =>
        Assert.Equal(expected, ReadingTable.Show(ReadingParser.Parse(message, ReadingTable.Context(context))));
}
