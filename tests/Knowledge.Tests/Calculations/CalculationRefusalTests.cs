using DxAssistant.Knowledge.Calculations;

namespace DxAssistant.Knowledge.Tests.Calculations;

/// <summary>What cannot be is refused, and the refusal names the input or the reason.</summary>
public sealed class CalculationRefusalTests
{
    // Source: definition, each row for itself. No mean, no share of it; no divider without a load; poles come in pairs;
    // a limit below the other limit bounds nothing; absolute pressure is not negative; vapour is part of the air's
    // pressure; a wet bulb is the colder one.
    [Theory]
    [InlineData("leg-open-neutral-01", "R1=0; R2=0", "R1 and R2")]
    [InlineData("unb-nema-01", "V1=0; V2=0; V3=0", "mean")]
    [InlineData("unb-cur-01", "I1=0; I2=0; I3=0", "mean")]
    [InlineData("unb-iec-01", "U12=0; U23=0; U31=0", "mean")]
    [InlineData("unb-approx82-01", "U12=0; U23=0; U31=0", "mean")]
    [InlineData("wind-balance-01", "R12=0; R23=0; R31=0", "mean")]
    [InlineData("wind-delta-terminals-01", "Ra_12=0; Rb_23=0; Rc_31=0", "zero")]
    [InlineData("sync-speed-01", "poles=3", "poles")]
    [InlineData("sync-speed-01", "poles=1", "poles")]
    [InlineData("signal-swing-01", "highest=7", "highest is below lowest")]
    [InlineData("module-six-01", "low=0.8", "low is above high")]
    [InlineData("module-six-01", "upper=[0.45, 0.46]", "three readings each")]
    [InlineData("module-six-01", "lower=[0.45, 0.46]", "three readings each")]
    [InlineData("air-split-01", "low=15", "low is above high")]
    [InlineData("line-charge-01", "L_charged=21", "L_charged is longer than L_max")]
    [InlineData("switch-state-01", "cut_in=4200", "above cut_in in a high")]
    [InlineData("switch-state-01", "cut_in=4150", "above cut_in in a high")]
    [InlineData("switch-state-01", "kind=low", "below cut_in in a low")]
    [InlineData("n2-press-si-01", "p1_gauge=-102", "vacuum")]
    [InlineData("n2-press-si-01", "p1_gauge=-101.325", "vacuum")]
    [InlineData("n2-real-01", "p1_gauge=-102", "vacuum")]
    [InlineData("press-conv-01", "p_gauge=-14.8", "vacuum")]
    [InlineData("superheat-01", "p_gauge=-14.8", "vacuum")]
    [InlineData("superheat-01", "p_gauge=-101.325 kPa_gauge", "vacuum")]
    [InlineData("gauge-alt-error-01", "p_gauge=-14.8", "vacuum")]
    [InlineData("vac-water-01", "p=0", "p must be above 0")]
    [InlineData("psy-w-from-pv-01", "p_v=96", "p_v must be below p")]
    [InlineData("psy-w-from-pv-01", "p_v=95.461", "p_v must be below p")]
    [InlineData("psy-wb-01", "T_wb=41", "T_wb must not be above T_db")]
    [InlineData("psy-wb-01", "T_wb=5", "T_wb is below that of dry air")]
    [InlineData("psy-rh-01", "RH=101", "RH")]
    [InlineData("pt1000-r-01", "T=-273.15", "above -273.15")]
    [InlineData("lfl-convert-01", "LFL=0", "above 0 to 100")]
    [InlineData("m123-01", "refrigerant=R-410A", "does not burn")]
    [InlineData("ref-tsat-01", "refrigerant=R-410A; curve=", "curve is missing")]
    [InlineData("ir-min-class-01", "winding=field", "V_rated is missing")]
    [InlineData("ir-min-class-01", "winding=form-wound before 1970", "V_rated is missing")]
    [InlineData("ntc-table-01", "curve=8016", "R25 is missing")]
    [InlineData("ntc-b-01", "T2=25", "T1 and T2 must differ")]
    [InlineData("ntc-sh-fit-01", "R2=32650.9", "three points must differ")]
    [InlineData("ntc-sh-fit-01", "T3=-20", "three points must differ")]
    public void Run_WhatCannotBe_IsInvalid(string id, string changes, string problem) =>
        AssertInvalid(id, changes, problem);

    // Source: definition. Two results that exclude each other, or a sum of nothing, leave no share.
    [Theory]
    [InlineData("bayes-01", "prior=1; sensitivity=1", "cannot happen")]
    [InlineData("bayes-01", "sensitivity=0; specificity=1", "cannot happen")]
    [InlineData("lik-ratio-01", "specificity=1", "specificity")]
    [InlineData("lik-ratio-01", "specificity=0", "specificity")]
    [InlineData("normalize-posterior-01", "prior=[0.5, 0.5]", "equally long")]
    [InlineData("normalize-posterior-01", "likelihood=[0, 0, 0]", "no fault is left")]
    [InlineData("pc-order-01", "faults=[A, B, C]", "equally long")]
    [InlineData("pc-order-01", "cost=[20, 5, 10]", "equally long")]
    [InlineData("pc-order-01", "p=[0, 0, 0, 0]", "above 0")]
    [InlineData("iso14253-01", "T_L=254", "T_L must not be above T_U")]
    [InlineData("iso14253-2017-01", "T_L=254", "T_L must not be above T_U")]
    [InlineData("jcgm-pc2-01", "T_L=17", "T_L must not be above T_U")]
    [InlineData("combine-u-01", "u3=1 1", "u3 and c3 go together")]
    [InlineData("combine-u-01", "c3=1 1", "u3 and c3 go together")]
    [InlineData("combine-u-01", "u2=0.3 V", "units differ: none, V")]
    [InlineData("guard-band-01", "p_c_required=1", "below 1")]
    public void Run_OddsThatCannotBe_AreInvalid(string id, string changes, string problem) =>
        AssertInvalid(id, changes, problem);

    // Source: Kirchhoff's laws. In a triangle of voltages no side is longer than the other two together, nor is a
    // reading of a star.
    [Theory]
    [InlineData("unb-iec-01", "U12=500; U23=100; U31=100")]
    [InlineData("unb-iec-01", "U12=100; U23=500; U31=100")]
    [InlineData("unb-iec-01", "U12=100; U23=100; U31=500")]
    [InlineData("wind-star-solve-01", "R12=3; R23=1; R31=1")]
    [InlineData("wind-star-solve-01", "R12=1; R23=3; R31=1")]
    [InlineData("wind-star-solve-01", "R12=1; R23=1; R31=3")]
    public void Run_ThreeThatDoNotClose_AreInvalid(string id, string changes) =>
        AssertInvalid(id, changes, "one", "is larger than the other two together");

    // Source: what a table, a curve or a law is for: above boiling air is steam, a straight law may not turn negative,
    // a wire has no more than the supply to drop, a rule that gives no superheat gives no target, Steinhart and Hart
    // need a positive 1/T.
    [Theory]
    [InlineData("psy-rh-01", "T_db=150; RH=100", "boiling point")]
    [InlineData("psy-rh-01", "RH=0", "too low for a dew point")]
    [InlineData("psy-wb-01", "T_db=150; T_wb=20", "boiling point")]
    [InlineData("cool-states-si-01", "T_in=150", "boiling point")]
    [InlineData("cool-states-si-01", "T_out=150", "boiling point")]
    [InlineData("target-superheat-01", "T_wb_indoor=50", "no superheat")]
    [InlineData("line-charge-01", "L=21", "L is longer than the unit allows")]
    [InlineData("ref-tsat-01", "p=10000", "p is covered")]
    [InlineData("ref-tsat-01", "refrigerant=R-410A; curve=; p=5000", "p is covered")]
    [InlineData("ref-sat-r32-01", "T=100", "T is covered")]
    [InlineData("superheat-01", "p_gauge=900", "outside of the curve")]
    [InlineData("vac-water-01", "p=20000000", "p is covered")]
    [InlineData("vd-1ph-01", "I=1000", "larger than the supply")]
    [InlineData("wire-temp-01", "alpha=0.1", "too far from T1")]
    [InlineData("awg-r-01", "size=7", "no such size")]
    [InlineData("awg-r-01", "size=6; stranding=solid", "no such size")]
    [InlineData("iec-r-01", "size=3", "no such size")]
    [InlineData("ir-min-class-01", "winding=hand-made", "winding is covered")]
    [InlineData("cu-r-01", "T1=-100; k=100", "T1")]
    [InlineData("cu-r-01", "T2=-100; k=100", "T2")]
    [InlineData("cu-t-01", "T1=-100; k=100", "T1")]
    [InlineData("cu-rise-01", "T1=-100; k=100", "T1")]
    [InlineData("ntc-interp-01", "T=56", "50 K")]
    [InlineData("ntc-beta-t-01", "R=1e-6; B=100", "too low")]
    [InlineData("ntc-sh-t-01", "A=0; B=0; C=0", "no temperature")]
    [InlineData("ntc-table-01", "T=111", "T is covered for -50 to 110 °C")]
    [InlineData("ntc-table-01", "curve=no-such-curve", "AT-10k-3435")]
    [InlineData("pt1000-t-01", "R=3905", "R is covered")]
    [InlineData("pt1000-t-01", "R=185", "R is covered")]
    [InlineData("seg-glyph-01", "char=@", "no agreed shape")]
    public void Run_BeyondWhatIsCovered_IsOutOfRange(string id, string changes, string problem)
    {
        var refused = Assert.IsType<CalculationResult.OutOfRange>(ChangedCase.Run(id, changes));
        Assert.Contains(problem, refused.Message, StringComparison.Ordinal);
    }

    // Source: ASHRAE 34, designations of refrigerants: R and digits, then letters. What has that shape is one that is
    // not held; what has it not is no refrigerant at all.
    [Theory]
    [InlineData("superheat-01", "R-999", true)]
    [InlineData("superheat-01", "water", false)]
    [InlineData("ref-tsat-01", "R-999", true)]
    [InlineData("ref-tsat-01", "water", false)]
    [InlineData("safety-class-01", "R-999", true)]
    [InlineData("safety-class-01", "water", false)]
    [InlineData("ref-sat-r32-01", "R-999", true)]
    [InlineData("gauge-alt-error-01", "water", false)]
    public void Run_UnknownRefrigerant_IsOutOfRangeWhenItCouldBeOne(string id, string name, bool couldBe)
    {
        CalculationResult result = ChangedCase.Run(id, "refrigerant=" + name);
        Assert.Equal(couldBe ? typeof(CalculationResult.OutOfRange) : typeof(CalculationResult.InvalidInput),
            result.GetType());
        Assert.Contains("refrigerant is covered for ", result.ToString(), StringComparison.Ordinal);
        Assert.Contains("R-32", result.ToString(), StringComparison.Ordinal);
    }

    private static void AssertInvalid(string id, string changes, params string[] problems)
    {
        var refused = Assert.IsType<CalculationResult.InvalidInput>(ChangedCase.Run(id, changes));
        foreach (string problem in problems)
            Assert.Contains(problem, refused.Message, StringComparison.Ordinal);
    }
}
