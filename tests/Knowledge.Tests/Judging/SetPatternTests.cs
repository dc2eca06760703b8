using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Knowledge.Tests.Judging;

/// <summary>Sets of readings that mean something together, or cannot be.</summary>
public sealed class SetPatternTests
{
    private const string Split = "nominal = 240 V; below = 5 %; above = 5 %; meter = 1 % + 3 × 0.1 V";
    private const string Phases = "limit = 3 %; meter = 1 % + 3 × 0.1 V";
    private const string Winding = "limit = 5 %; meter = 0.5 % + 2 × 0.001 Ω; nominal = 1.1 Ω";

    // Source: Kirchhoff's voltage law for two legs opposite in phase: leg to leg is the sum of the legs to ground.
    // 208 V with 120 V legs: two phasors 120 V at 120°, 2 × 120 V × sin 60° = 207.8 V.
    // 222/120/102: 18 V lost in a bad contact of the second leg. 240/60/180: open neutral, loads of 10 and 30 Ω.
    [Theory]
    [InlineData(VerdictKind.Within, null, "240 V", "120 V", "120 V")]
    [InlineData(VerdictKind.Unequal, "open-neutral", "240 V", "60 V", "180 V")]
    [InlineData(VerdictKind.Unequal, "open-neutral", "238 V", "148 V", "92 V")]
    [InlineData(VerdictKind.Unequal, "one-leg-low", "222 V", "120 V", "102 V")]
    [InlineData(VerdictKind.Unequal, "one-leg-lost", "120 V", "120 V", "0 V")]
    [InlineData(VerdictKind.Low, "same-leg-twice", "0.5 V", "120 V", "120 V")]
    [InlineData(VerdictKind.Unequal, "ground-is-live", "120 V", "240 V", "120 V")]
    [InlineData(VerdictKind.Unequal, "ground-is-live", "120 V", "120 V", "240 V")]
    [InlineData(VerdictKind.Low, "legs-of-three-phase", "208 V", "120 V", "120 V")]
    [InlineData(VerdictKind.Impossible, "no-split-supply", "240 V", "240 V", "240 V")]
    [InlineData(VerdictKind.Impossible, "no-split-supply", "120 V", "120 V", "120 V")]
    [InlineData(VerdictKind.Impossible, "voltages-do-not-close", "240 V", "60 V", "70 V")]
    [InlineData(VerdictKind.Impossible, "voltages-do-not-close", "20 V", "180 V", "60 V")]
    public void SplitSupply_Set_IsRecognised(VerdictKind verdict, string? pattern, params string[] readings)
    {
        var judgement = Ask.Judge("split-supply", Split, readings);
        Assert.Equal((verdict, pattern), (judgement.Verdict, judgement.PatternKey));
    }

    // Hand computed: L3 lost, held by equal windings in star at the middle of L1 and L2: 400 V, 200 V, 200 V.
    [Theory]
    [InlineData(VerdictKind.Within, null, null, "400 V", "402 V", "399 V")]
    [InlineData(VerdictKind.High, "phase-lost", "L3", "400 V", "200 V", "200 V")]
    [InlineData(VerdictKind.High, "phase-lost", "L1", "212 V", "400 V", "190 V")]
    [InlineData(VerdictKind.High, null, "L2-L3", "400 V", "340 V", "395 V")]
    [InlineData(VerdictKind.Impossible, "voltages-do-not-close", null, "400 V", "150 V", "150 V")]
    public void VoltageUnbalance_Set_IsRecognised(
        VerdictKind verdict, string? pattern, string? odd, params string[] readings)
    {
        var judgement = Ask.Judge("voltage-unbalance", Phases, readings);
        Assert.Equal((verdict, pattern, odd), (judgement.Verdict, judgement.PatternKey, judgement.OddOneOut));
    }

    // Source: two-terminal resistance of a network is a distance (Klein and Randić 1993, from memory); delta of 3 Ω
    // phases with one open: 6 Ω across it and 3 Ω at the others; star with the lead of V open: two pairs open.
    [Theory]
    [InlineData(VerdictKind.Unequal, "delta-phase-open", "V-W", "1.1 Ω", "2.2 Ω", "1.1 Ω")]
    [InlineData(VerdictKind.OpenCircuit, "one-terminal-open", "V", Ask.Open, Ask.Open, "1.1 Ω")]
    [InlineData(VerdictKind.OpenCircuit, "all-open", null, Ask.Open, Ask.Open, Ask.Open)]
    [InlineData(VerdictKind.Impossible, "one-reading-open", "U-V", Ask.Open, "1.1 Ω", "1.1 Ω")]
    [InlineData(VerdictKind.Impossible, "resistances-do-not-close", null, "1.1 Ω", "3.3 Ω", "1.1 Ω")]
    public void WindingBalance_Set_IsRecognised(
        VerdictKind verdict, string? pattern, string? odd, params string[] readings)
    {
        var judgement = Ask.Judge("winding-balance", Winding, readings);
        Assert.Equal((verdict, pattern, odd), (judgement.Verdict, judgement.PatternKey, judgement.OddOneOut));
    }
}
