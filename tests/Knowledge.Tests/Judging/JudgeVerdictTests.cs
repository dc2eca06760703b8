using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Knowledge.Tests.Judging;

/// <summary>Readings with known answers; the source stands above each group.</summary>
public sealed class JudgeVerdictTests
{
    private const string Sensor = "curve = AT-10k-3435; tolerance = 2 K; meter = 1 % + 3 × 0.01 kΩ; thermometer = 1 K";
    private const string Winding = "limit = 5 %; meter = 0.5 % + 2 × 0.001 Ω";
    private const string Nominal = Winding + "; nominal = 1.10 Ω; nominal-tolerance = 15 %";
    private const string Supply = "nominal = 230 V; below = 10 %; above = 10 %; meter = 0.7 % + 2 × 0.1 V";
    private const string Diodes = "low = 0.3 V; high = 0.7 V; spread = 0.05 V; meter = 1 % + 2 × 0.001 V";
    private const string Split = "nominal = 240 V; below = 5 %; above = 5 %; meter = 0.7 % + 2 × 0.1 V";
    private const string Contact = "closed = 2 Ω; open = 10 kΩ; meter = 1 % + 3 × 0.1 Ω";
    private const string Corrected = "minimum = 5 MΩ; meter = 5 % + 2 × 0.1 MΩ; thermometer = 1 K";

    // Source: published table of a 10 kΩ, 3435 K thermistor: 27.28 kΩ at 0 °C, 10.00 kΩ at 25 °C, 12.09 kΩ at 20 °C.
    [Theory]
    [InlineData(VerdictKind.Within, "27.28 kΩ", "0 °C")]
    [InlineData(VerdictKind.Within, "10.0 kΩ", "77 °F")]
    [InlineData(VerdictKind.Low, "7.0 kΩ", "25 °C")]
    [InlineData(VerdictKind.High, "15.0 kΩ", "25 °C")]
    [InlineData(VerdictKind.OpenCircuit, Ask.Open, "25 °C")]
    [InlineData(VerdictKind.OpenCircuit, "20 MΩ", "25 °C")]
    [InlineData(VerdictKind.ShortCircuit, Ask.Short, "25 °C")]
    [InlineData(VerdictKind.ShortCircuit, "0 Ω", "25 °C")]
    [InlineData(VerdictKind.TooCloseToCall, "9.1 kΩ", "25 °C")]
    [InlineData(VerdictKind.Impossible, "-5 kΩ", "25 °C")]
    [InlineData(VerdictKind.Impossible, "10 kΩ", "-80 °C")]
    [InlineData(VerdictKind.Impossible, "10 V", "25 °C")]
    public void ThermistorCurve_TableValues_GiveTheVerdict(VerdictKind expected, params string[] readings) =>
        Assert.Equal(expected, Ask.Judge("thermistor-curve", Sensor, readings).Verdict);

    // Source: balance 1.02/1.00/1.01 Ω is 0.99 %, 0.98/1.10/0.99 Ω is 7.49 % (deviation from the mean); trade limits
    // from memory.
    [Theory]
    [InlineData(VerdictKind.Within, "1.02 Ω", "1.00 Ω", "1.01 Ω")]
    [InlineData(VerdictKind.Unequal, "0.98 Ω", "1.10 Ω", "0.99 Ω")]
    [InlineData(VerdictKind.OpenCircuit, Ask.Open, "1.00 Ω", Ask.Open)]
    [InlineData(VerdictKind.OpenCircuit, "2 MΩ", "1.00 Ω", "2 MΩ")]
    [InlineData(VerdictKind.ShortCircuit, "0.02 Ω", "1.00 Ω", "1.00 Ω")]
    [InlineData(VerdictKind.TooCloseToCall, "1.00 Ω", "1.00 Ω", "1.076 Ω")]
    public void WindingBalance_ThreeReadings_GiveTheVerdict(VerdictKind expected, params string[] readings) =>
        Assert.Equal(expected, Ask.Judge("winding-balance", Winding, readings).Verdict);

    [Theory]
    [InlineData(VerdictKind.Within, "1.10 Ω")]
    [InlineData(VerdictKind.Low, "0.60 Ω")]
    [InlineData(VerdictKind.High, "1.90 Ω")]
    [InlineData(VerdictKind.ShortCircuit, "0.02 Ω")]
    public void WindingBalance_EqualAgainstNominal_GiveTheVerdict(VerdictKind expected, string each) =>
        Assert.Equal(expected, Ask.Judge("winding-balance", Nominal, each, each, each).Verdict);

    // Source: copper, IEC 60034-1: 1.10 Ω at 20 °C is 1.10 × 315/255 = 1.359 Ω at 80 °C.
    [Fact]
    public void WindingBalance_HotWinding_IsHeldAgainstTheHotNominal()
    {
        Assert.Equal(VerdictKind.High, Ask.Judge("winding-balance", Nominal, "1.36 Ω", "1.36 Ω", "1.36 Ω").Verdict);
        Assert.Equal(VerdictKind.Within, Ask.Judge("winding-balance", Nominal + "; temperature = 80 °C", "1.36 Ω",
            "1.36 Ω", "1.36 Ω").Verdict);
    }

    // Source: circuit theory; star with one terminal open, delta with one phase open (2 R across it, R at the others).
    [Fact]
    public void WindingBalance_Patterns_AreNamed()
    {
        var star = Ask.Judge("winding-balance", Winding, "U–V: 1 Ω", "V–W: 1 Ω", "U–W: 1 Ω");
        Assert.Null(star.PatternKey);
        var terminal = Ask.Judge("winding-balance", Winding, Ask.Open, "V–W: 1 Ω", Ask.Open);
        Assert.Equal(("one-terminal-open", "U"), (terminal.PatternKey, terminal.OddOneOut));
        var delta = Ask.Judge("winding-balance", Winding, "U–V: 1.0 Ω", "V–W: 2.0 Ω", "U–W: 1.0 Ω");
        Assert.Equal((VerdictKind.Unequal, "delta-phase-open", "V–W"),
            (delta.Verdict, delta.PatternKey, delta.OddOneOut));
        Assert.Equal("all-open", Ask.Judge("winding-balance", Winding, Ask.Open, Ask.Open, Ask.Open).PatternKey);
        Assert.Equal("one-reading-open", Ask.Judge("winding-balance", Winding, Ask.Open, "1 Ω", "1 Ω").PatternKey);
    }

    // Source: common practice, no source: silicon diodes drop 0.3 to 0.7 V; module diodes are alike. Of 44 mV within a
    // spread of 50 mV only the two counts of each reading are uncertain, u = 2 mV sqrt(2) / sqrt(3) = 1.6 mV (GUM
    // 5.2.2).
    [Theory]
    [InlineData(VerdictKind.Within, null, "0.45 V", "0.45 V", "0.494 V", "0.45 V", "0.44 V", "0.45 V")]
    [InlineData(VerdictKind.Within, null, "0.45 V", "0.45 V", "0.46 V", "0.45 V", "0.44 V", "0.45 V")]
    [InlineData(VerdictKind.Unequal, "P-V", "0.45 V", "0.58 V", "0.46 V", "0.45 V", "0.44 V", "0.45 V")]
    [InlineData(VerdictKind.Unequal, "N-W", "0.45 V", "0.45 V", "0.46 V", "0.45 V", "0.44 V", "0.90 V")]
    [InlineData(VerdictKind.OpenCircuit, "P-U", Ask.Open, "0.45 V", "0.46 V", "0.45 V", "0.44 V", "0.45 V")]
    [InlineData(VerdictKind.ShortCircuit, "N-U", "0.45 V", "0.45 V", "0.46 V", "0.001 V", "0.44 V", "0.45 V")]
    [InlineData(VerdictKind.ShortCircuit, "N-V", Ask.Open, "0.45 V", "0.46 V", "0.45 V", Ask.Short, "0.45 V")]
    public void ModuleDiodes_SixDrops_GiveTheVerdict(VerdictKind expected, string? odd, params string[] readings)
    {
        var judgement = Ask.Judge("module-diodes", Diodes, readings);
        Assert.Equal((expected, odd), (judgement.Verdict, judgement.OddOneOut));
    }

    // Source: IEC 60038, 230 V ± 10 % is 207 to 253 V, ends included. Absent below a tenth: common practice, no source.
    [Theory]
    [InlineData(VerdictKind.Within, "230 V")]
    [InlineData(VerdictKind.Low, "198 V")]
    [InlineData(VerdictKind.High, "260 V")]
    [InlineData(VerdictKind.TooCloseToCall, "207.5 V")]
    [InlineData(VerdictKind.Low, "120 V")]
    [InlineData(VerdictKind.Low, "30 V")]
    [InlineData(VerdictKind.TooCloseToCall, "23 V")]
    [InlineData(VerdictKind.Absent, "12 V")]
    [InlineData(VerdictKind.Absent, "0 V")]
    [InlineData(VerdictKind.Impossible, "-230 V")]
    [InlineData(VerdictKind.Impossible, Ask.Open)]
    public void SupplyLimits_OneVoltage_GivesTheVerdict(VerdictKind expected, string reading) =>
        Assert.Equal(expected, Ask.Judge("supply-limits", Supply, reading).Verdict);

    // Source: NEMA MG 1 example, 460/467/450 V is 1.96 %; 400/400/340 V is 10.5 %.
    [Theory]
    [InlineData(VerdictKind.Within, null, "460 V", "467 V", "450 V")]
    [InlineData(VerdictKind.High, "L3-L1", "400 V", "400 V", "340 V")]
    [InlineData(VerdictKind.Absent, null, "0 V", "0 V", "0 V")]
    [InlineData(VerdictKind.Absent, null, "9 V", "2 V", "1 V")]
    [InlineData(VerdictKind.Impossible, null, "400 V", "20 V", "20 V")]
    public void VoltageUnbalance_ThreeVoltages_GiveTheVerdict(
        VerdictKind expected, string? odd, params string[] readings)
    {
        var judgement = Ask.Judge("voltage-unbalance", "limit = 3 %; meter = 0.7 % + 2 × 0.1 V", readings);
        Assert.Equal((expected, odd), (judgement.Verdict, judgement.OddOneOut));
    }

    // Source: circuit theory; open neutral on 240 V with loads of 10 and 30 Ω reads 60 and 180 V.
    [Theory]
    [InlineData(VerdictKind.Within, null, null, "240 V", "120 V", "120 V")]
    [InlineData(VerdictKind.Unequal, "L1-ground", "open-neutral", "240 V", "60 V", "180 V")]
    [InlineData(VerdictKind.Unequal, "L2-ground", "one-leg-lost", "120 V", "120 V", "0 V")]
    [InlineData(VerdictKind.Low, null, null, "210 V", "105 V", "105 V")]
    [InlineData(VerdictKind.High, null, null, "270 V", "135 V", "135 V")]
    [InlineData(VerdictKind.Absent, null, null, "0 V", "0 V", "0 V")]
    [InlineData(VerdictKind.Absent, null, null, "9 V", "2 V", "1 V")]
    public void SplitSupply_ThreeVoltages_GiveTheVerdict(
        VerdictKind expected, string? odd, string? pattern, params string[] readings)
    {
        var judgement = Ask.Judge("split-supply", Split, readings);
        Assert.Equal((expected, odd, pattern), (judgement.Verdict, judgement.OddOneOut, judgement.PatternKey));
    }

    [Theory]
    [InlineData(VerdictKind.Closed, "0.3 Ω")]
    [InlineData(VerdictKind.Closed, Ask.Short)]
    [InlineData(VerdictKind.High, "60 Ω")]
    [InlineData(VerdictKind.OpenCircuit, "3 MΩ")]
    [InlineData(VerdictKind.OpenCircuit, Ask.Open)]
    [InlineData(VerdictKind.TooCloseToCall, "2.1 Ω")]
    public void Continuity_OneResistance_GivesTheVerdict(VerdictKind expected, string reading) =>
        Assert.Equal(expected, Ask.Judge("continuity", Contact, reading).Verdict);

    // Source: IEEE 43, 480 V machine by the old rule: 1.48 MΩ at least.
    [Theory]
    [InlineData(VerdictKind.Within, null, "200 MΩ")]
    [InlineData(VerdictKind.Within, null, Ask.Open)]
    [InlineData(VerdictKind.Low, null, "0.3 MΩ")]
    [InlineData(VerdictKind.Low, null, Ask.Short)]
    [InlineData(VerdictKind.Low, "third", "200 MΩ", Ask.Open, "0.4 MΩ")]
    [InlineData(VerdictKind.TooCloseToCall, null, "1.5 MΩ")]
    public void Insulation_OneOrThree_GiveTheVerdict(VerdictKind expected, string? odd, params string[] readings)
    {
        var judgement = Ask.Judge("insulation", "minimum = 1.48 MΩ; meter = 5 % + 2 × 0.01 MΩ", readings);
        Assert.Equal((expected, odd), (judgement.Verdict, judgement.OddOneOut));
    }

    // Source: IEEE 43-2013: 5 MΩ at 40 °C for random windings below 1 kV. By halving 20 MΩ at 20 °C is 5 MΩ; by the
    // 2013 formula 20 MΩ at 70 °C is 65 MΩ (factor 3.3 in the standard's rounded column), where halving says 160 MΩ.
    [Theory]
    [InlineData(VerdictKind.Within, "28 MΩ", "20 °C")]
    [InlineData(VerdictKind.Low, "14 MΩ", "68 °F")]
    [InlineData(VerdictKind.TooCloseToCall, "20 MΩ", "20 °C")]
    [InlineData(VerdictKind.Within, "2 MΩ", "70 °C")]
    [InlineData(VerdictKind.Low, "1.2 MΩ", "70 °C")]
    [InlineData(VerdictKind.Within, "5.8 MΩ", "40 °C")]
    [InlineData(VerdictKind.Within, Ask.Open, "20 °C")]
    [InlineData(VerdictKind.Low, Ask.Short, "20 °C")]
    [InlineData(VerdictKind.Impossible, "20 MΩ", "120 °C")]
    [InlineData(VerdictKind.Impossible, "20 °C", "20 MΩ")]
    public void InsulationCorrected_ReadingAndTemperature_GiveTheVerdict(VerdictKind expected,
        params string[] readings) =>
        Assert.Equal(expected, Ask.Judge("insulation-corrected", Corrected, readings).Verdict);

    [Theory]
    [InlineData("20 °C", "0.5^", "doubling")]
    [InlineData("70 °C", "-4230", "thermosetting")]
    public void InsulationCorrected_Verdict_SaysWhichRule(string winding, string formula, string source)
    {
        var how = Ask.Judge("insulation-corrected", Corrected, "50 MΩ", winding).Derivation.Children[0];
        Assert.Contains(formula, how.Formula, StringComparison.Ordinal);
        Assert.Contains(source, how.Source.ToString(), StringComparison.Ordinal);
    }

    // Source: peak of a rectified sine, 230 V gives 325.3 V, 208 V gives 294.2 V.
    [Theory]
    [InlineData(VerdictKind.Within, "", "230 V", "325 V")]
    [InlineData(VerdictKind.Within, "", "230 V", "-325 V")]
    [InlineData(VerdictKind.Low, "", "230 V", "230 V")]
    [InlineData(VerdictKind.High, "", "230 V", "390 V")]
    [InlineData(VerdictKind.Within, "; boost = 380 V", "230 V", "380 V")]
    [InlineData(VerdictKind.Low, "; boost = 380 V", "230 V", "325 V")]
    [InlineData(VerdictKind.Impossible, "", "2 V", "0 V")]
    public void DcBus_SupplyAndBus_GiveTheVerdict(VerdictKind expected, string more, params string[] readings) =>
        Assert.Equal(expected, Ask.Judge("dc-bus", "tolerance = 8 %; meter = 1 % + 2 × 1 V" + more, readings).Verdict);

    [Theory]
    [InlineData(VerdictKind.Within, "46 Ω")]
    [InlineData(VerdictKind.Low, "12 Ω")]
    [InlineData(VerdictKind.High, "0.2 kΩ")]
    [InlineData(VerdictKind.High, Ask.Open)]
    [InlineData(VerdictKind.Low, Ask.Short)]
    [InlineData(VerdictKind.Impossible, "46 V")]
    public void Band_OneResistance_GivesTheVerdict(VerdictKind expected, string reading) =>
        Assert.Equal(expected, Ask.Judge("band", "low = 41 Ω; high = 51 Ω; meter = 1 % + 3 × 0.1 Ω", reading).Verdict);

    // A meter on direct volts shows a minus sign where its leads stand the other way round: common practice, no source.
    [Theory]
    [InlineData(VerdictKind.Within, "12.1 V")]
    [InlineData(VerdictKind.Low, "0 V")]
    [InlineData(VerdictKind.Low, "-0.4 V")]
    [InlineData(VerdictKind.Low, "6 V")]
    [InlineData(VerdictKind.High, "19 V")]
    [InlineData(VerdictKind.Reversed, "-12 V")]
    [InlineData(VerdictKind.Reversed, "-24 V")]
    [InlineData(VerdictKind.Impossible, "12 Ω")]
    public void PolarBand_OneDirectVoltage_GivesTheVerdict(VerdictKind expected, string reading) =>
        Assert.Equal(expected,
            Ask.Judge("polar-band", "low = 10.5 V; high = 13.5 V; meter = 0.5 % + 2 × 0.01 V", reading).Verdict);

    [Fact]
    public void Band_Temperature_TakesItsMeterAsADifference()
    {
        var judgement = Ask.Judge("band", "low = 45 °C; high = 100 °C; meter = ± 2 °C", "158 °F");
        Assert.Equal(VerdictKind.Within, judgement.Verdict);
        Assert.Equal(2 / Math.Sqrt(3), judgement.Expected[0].StandardUncertainty!.Si, 1e-9);
    }

    // Source: C = I / (2 π f V); 4.0 A at 302 V and 60 Hz is 35.13 µF.
    [Theory]
    [InlineData(VerdictKind.Within, "4.0 A", "302 V")]
    [InlineData(VerdictKind.Low, "3.4 A", "302 V")]
    [InlineData(VerdictKind.High, "4.6 A", "302 V")]
    [InlineData(VerdictKind.Impossible, "2 A", "0 V")]
    public void Capacitor_CurrentAndVoltage_GiveTheVerdict(VerdictKind expected, params string[] readings) =>
        Assert.Equal(expected, Ask.Judge("capacitor", "rated = 35 µF; tolerance = 6 %; frequency = 60 Hz; meter = 2 %",
            readings).Verdict);

    [Theory]
    [InlineData(VerdictKind.Within, "-5 V", "24 V")]
    [InlineData(VerdictKind.Low, "14.8 V", "15.1 V")]
    public void SignalSwing_LowestAndHighest_GiveTheVerdict(VerdictKind expected, params string[] readings) =>
        Assert.Equal(expected, Ask.Judge("signal-swing", "swing = 10 V; meter = 1 % + 3 × 0.1 V", readings).Verdict);
}
