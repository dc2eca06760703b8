using System.Globalization;
using DxAssistant.Knowledge.Calculations;

namespace DxAssistant.Knowledge.Tests.Calculations;

/// <summary>
/// Cases at an end that belongs to the range, and cases that only one branch of a calculation answers.
/// </summary>
public sealed class CalculationEdgeTests
{
    // Source: by hand from the formula of each calculation. 1, 1, 2: mean 4/3, deviation 2/3, half of it; 1, 3, 1: mean
    // 5/3, 4/3, 80 %. Delta: Ra (Rb + Rc) / sum. Star: (R12 + R31 - R23) / 2, none left is a shorted phase, not an
    // error.
    [Theory]
    [InlineData("wind-balance-01", "R12=1; R23=1; R31=2", "imbalance", 50)]
    [InlineData("wind-balance-01", "R12=1; R23=3; R31=1", "imbalance", 80)]
    [InlineData("wind-delta-terminals-01", "Ra_12=1; Rb_23=1; Rc_31=3", "R31", 1.2)]
    [InlineData("wind-delta-terminals-01", "Ra_12=1; Rb_23=3; Rc_31=1", "R23", 1.2)]
    [InlineData("wind-star-solve-01", "R12=2; R23=1; R31=1", "R3", 0)]
    [InlineData("wind-star-solve-01", "R12=2; R23=1; R31=1", "R1", 1)]
    [InlineData("wind-star-solve-01", "R12=1; R23=2; R31=1", "R1", 0)]
    [InlineData("wind-star-solve-01", "R12=1; R23=1; R31=2", "R2", 0)]
    [InlineData("signal-swing-01", "highest=8", "swing", 0)]
    [InlineData("line-charge-01", "L=20", "extra", 0.3)]
    [InlineData("line-charge-01", "L=5; L_charged=20", "extra", 0)]
    [InlineData("n2-press-si-01", "p1_gauge=0; T1=20; T2=50", "p2_gauge", 101.325 * 30 / 293.15)]
    [InlineData("press-conv-01", "p_gauge=-101.325 kPa_gauge", "p_abs", 0)]
    [InlineData("vd-1ph-01", "I=10; R=1000 ohm/km; length_one_way=10 m; V=200", "V_load", 0)]
    [InlineData("leg-open-neutral-01", "R1=0", "V_leg1", 0)]
    [InlineData("combine-u-01", "u1=1; u2=1; u3=1 1; c3=1 1", "u_c", 1.7320508)]
    [InlineData("iso14253-2017-01", "u=2", "guard", 3.3)]
    [InlineData("coil-r-01", "T=20", "R", 46)]
    [InlineData("psy-wb-01", "T_wb=40", "RH", 100)]
    [InlineData("psy-wb-01", "T_wb=40", "T_dp", 40)]
    [InlineData("ntc-interp-01", "T=55; Tx=5; alpha_at_Tx=1", "R", 4700 * 2.2739 * 0.6545)]
    [InlineData("ntc-beta-r-01", "B=10000; T=-150; R25=1", "R", 5.0024e+20)]
    public void Run_EndOfTheRange_Answers(string id, string changes, string output, double expected) =>
        Assert.Equal(expected, Number(id, changes, output), Math.Max(1e-6, Math.Abs(expected) * 1e-3));

    // Source: the formulas' own words, "from … up", "ends included", "at or below 500 micron after 10 min or more".
    [Theory]
    [InlineData("signal-swing-01", "highest=23", "alive", "true")]
    [InlineData("signal-swing-01", "highest=22.9", "alive", "false")]
    [InlineData("module-six-01", "low=0.45; high=0.45; upper=[0.45, 0.45, 0.45]; lower=[0.45, 0.45, 0.45]", "verdict",
        "pass")]
    [InlineData("module-six-01", "lower=[0.9, 0.9, 0.9]", "verdict", "fail")]
    [InlineData("module-six-01", "upper=[0.9, 0.9, 0.9]", "verdict", "fail")]
    [InlineData("module-six-01", "upper=[0.4, 0.5, 0.45]", "verdict", "fail")]
    [InlineData("module-six-01", "lower=[0.4, 0.5, 0.45]", "verdict", "fail")]
    [InlineData("air-split-01", "low=11; high=11", "side", "inside")]
    [InlineData("switch-state-01", "p=4150", "state", "open")]
    [InlineData("switch-state-01", "p=3100", "state", "closed")]
    [InlineData("switch-state-01", "p=3500", "state", "as it was")]
    [InlineData("switch-state-01", "kind=low; cut_out=200; cut_in=400; p=200", "state", "open")]
    [InlineData("switch-state-01", "kind=low; cut_out=200; cut_in=400; p=400", "state", "closed")]
    [InlineData("vac-decay-01", "minutes=9", "verdict", "indeterminate")]
    [InlineData("vac-decay-01", "p_end=501", "verdict", "fail")]
    [InlineData("vac-decay-01", "p_end=500", "verdict", "pass")]
    [InlineData("iso14253-01", "y=209", "verdict", "pass")]
    [InlineData("iso14253-01", "y=208", "verdict", "indeterminate")]
    [InlineData("iso14253-01", "y=206", "verdict", "indeterminate")]
    [InlineData("iso14253-01", "y=204", "verdict", "fail")]
    [InlineData("iso14253-01", "y=252", "verdict", "indeterminate")]
    [InlineData("iso14253-01", "y=254", "verdict", "indeterminate")]
    [InlineData("iso14253-01", "y=256", "verdict", "fail")]
    [InlineData("iso14253-01", "y=230; U=0; T_L=230; T_U=230", "verdict", "pass")]
    [InlineData("iso14253-2017-01", "y=255; u=2", "verdict", "indeterminate")]
    [InlineData("dc-bus-boost-01", "V_dc=330", "boosted", "false")]
    [InlineData("cap-tol-01", "C_measured=7.05", "verdict", "pass")]
    [InlineData("cap-tol-01", "C_measured=7.95", "verdict", "pass")]
    [InlineData("coil-r-01", "R_measured=60", "verdict", "fail")]
    [InlineData("sup-classify-01", "measured=228", "verdict", "inside")]
    [InlineData("sup-classify-01", "measured=252", "verdict", "inside")]
    [InlineData("sup-classify-01", "measured=252.1", "verdict", "above")]
    [InlineData("safety-class-01", "refrigerant=r 410a", "class", "A1")]
    [InlineData("seg-confusable-01", "char2=1", "same_segments", "false")]
    public void Run_Rule_SaysTheWord(string id, string changes, string output, string expected) =>
        Assert.Equal(expected, ChangedCase.Output(id, changes, output).ToString());

    // Source: IEEE 43-2013: 5 MΩ for random-wound and for form-wound below 1 kV, 100 MΩ for form-wound and for
    // armatures, kV + 1 for field windings and for those before about 1970 (from memory).
    [Theory]
    [InlineData("winding=Random-wound", 5)]
    [InlineData("winding=form-wound under 1 kV", 5)]
    [InlineData("winding=form-wound", 100)]
    [InlineData("winding=DC armature", 100)]
    [InlineData("winding=Field; V_rated=4000 V", 5)]
    [InlineData("winding=random-wound Before 1970; V_rated=480 V", 1.48)]
    public void Run_KindOfWinding_HasItsLeastResistance(string changes, double megohms) =>
        Assert.Equal(megohms, Number("ir-min-class-01", changes, "IR_min"), 1e-9);

    // Source: definition of gauge pressure: the same absolute pressure has the same saturation temperature, below two
    // atmospheres too.
    [Fact]
    public void Superheat_GaugeBelowOneAtmosphere_SaturatesAtTheAbsolutePressure()
    {
        double byAbsolute = Number("ref-tsat-01", "p=151.325; curve=dew", "T_sat");
        double byGauge = Number("sat-split-01", "refrigerant=R32; p_gauge=50; curve=dew; T_air=20", "T_sat");
        Assert.Equal(byAbsolute, byGauge, 1e-6);
    }

    // Source: UL 60335-2-40 and IEC 60335-2-40 as the formula states: no floor up to 6 LFL, then the larger of the two
    // (from memory).
    [Fact]
    public void LeastFloor_NewerRule_IsTheLargerOfTwoAndNoneForSmallCharges()
    {
        Assert.Equal(0, Number("a-min-a2l-01", "m=1.8", "A_min"));
        Assert.Equal(0, Number("a-min-a2l-01", "m=1.836", "A_min"));
        foreach (string mass in (string[])["m=1.9", "m=10"])
            Assert.Equal(Math.Max(Number("a-min-a2l-01", mass, "A_min_gg"), Number("a-min-a2l-01", mass, "A_min_075")),
                Number("a-min-a2l-01", mass, "A_min"), 1e-9);
        Assert.True(Number("a-min-a2l-01", "m=10", "A_min_gg") > Number("a-min-a2l-01", "m=10", "A_min_075"));
    }

    // Source: table of the normal distribution, Φ(1) = 0.8413 and Φ(-1) = 0.1587 (from memory); a lower limit mirrors
    // an upper one.
    [Theory]
    [InlineData("upper", 1, 0.8413)]
    [InlineData("upper", -1, 0.1587)]
    [InlineData("lower", 1, 0.1587)]
    [InlineData("lower", -1, 0.8413)]
    public void Conformance_OneLimit_DependsOnItsSide(string side, double limit, double expected) =>
        Assert.Equal(expected,
            Number("jcgm-pc1-01", string.Create(CultureInfo.InvariantCulture, $"y=0; u=1; limit={limit}; side={side}"),
                "p_c"), 1e-4);

    // Source: IEC 60751, table of Pt100: 18.52 Ω at -200 °C, 390.48 Ω at 850 °C; the ends are covered.
    [Theory]
    [InlineData(-200, 18.52)]
    [InlineData(850, 390.48)]
    public void Platinum_EndOfTheTable_IsCoveredBothWays(double celsius, double ohms)
    {
        string at = celsius.ToString(CultureInfo.InvariantCulture);
        double resistance = Number("pt1000-r-01", "R0=100; T=" + at, "R");
        Assert.Equal(ohms, resistance, 0.005);
        Assert.Equal(celsius,
            Number("pt1000-t-01", $"R0=100; R={resistance.ToString("R", CultureInfo.InvariantCulture)}", "T"), 1e-6);
    }

    // Source: SI brochure: a difference of temperatures has the degree of the temperatures: kelvins of kelvins and of
    // degrees Celsius, degrees Fahrenheit of degrees Fahrenheit. 25 to 14 °C is 11 K, 19.8 °F.
    [Theory]
    [InlineData("T_return=25 degC", "K", 11)]
    [InlineData("T_return=298.15 K", "K", 11)]
    [InlineData("T_return=77 degF", "F_diff", 19.8)]
    public void Split_OfTemperatures_HasTheirDegree(string changes, string unit, double expected)
    {
        var split = Assert.IsType<CalculationValue.Number>(ChangedCase.Output("air-split-01", changes, "split"));
        Assert.Equal(unit, split.Quantity.Unit.Code);
        Assert.Equal(expected, split.Quantity.Value, 1e-9);
    }

    private static double Number(string id, string changes, string output) =>
        Assert.IsType<CalculationValue.Number>(ChangedCase.Output(id, changes, output)).Quantity.Value;
}
