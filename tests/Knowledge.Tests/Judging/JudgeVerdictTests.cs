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
    private const string Line410 =
        "refrigerant = R-410A; low = 3 K; high = 8 K; altitude = 0 m; gauge = 20 kPa; thermometer = 1 K";

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

    // Source: hand computed; thermometers of ±0.5 K differ by u = 0.5 K sqrt(2) / sqrt(3) = 0.41 K, 3 K is 7 u from 0.
    [Theory]
    [InlineData(VerdictKind.Within, "22 °C", "22 °C")]
    [InlineData(VerdictKind.Within, "22 °C", "22.3 °C")]
    [InlineData(VerdictKind.High, "22 °C", "26 °C")]
    [InlineData(VerdictKind.TooCloseToCall, "22 °C", "25 °C")]
    public void TemperatureSplit_NoLeast_EqualTemperaturesAreWithin(VerdictKind expected, params string[] readings) =>
        Assert.Equal(expected, Ask.Judge("temperature-split", "low = 0 K; high = 3 K; thermometer = 0.5 K", readings)
            .Verdict);

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

    private const string Corrected = "minimum = 5 MΩ; meter = 5 % + 2 × 0.1 MΩ; thermometer = 1 K";

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

    // Source: Lemmon 2003 (R-410A): 118 psig at sea level is 39.84 °F dew, so a 50 °F line has 10.16 °F = 5.6 K of
    // superheat.
    [Theory]
    [InlineData(VerdictKind.Within, "118 psig", "50 °F")]
    [InlineData(VerdictKind.Within, "813.6 kPa", "10 °C")]
    [InlineData(VerdictKind.Low, "118 psig", "38 °F")]
    [InlineData(VerdictKind.High, "60 psig", "50 °F")]
    [InlineData(VerdictKind.High, "0 kPa", "20 °C")]
    [InlineData(VerdictKind.Impossible, "-105 kPa", "20 °C")]
    [InlineData(VerdictKind.Impossible, "118 °F", "50 °F")]
    public void Superheat_GaugeAndLine_GiveTheVerdict(VerdictKind expected, params string[] readings) =>
        Assert.Equal(expected, Ask.Judge("superheat", Line410, readings).Verdict);

    // Source: Lemmon 2003 (R-410A): 365 psig is 109.71 °F bubble, so a 98 °F line has 11.71 °F = 6.5 K of subcooling.
    [Theory]
    [InlineData(VerdictKind.Within, "365 psig", "98 °F")]
    [InlineData(VerdictKind.Low, "365 psig", "109 °F")]
    [InlineData(VerdictKind.High, "365 psig", "75 °F")]
    public void Subcooling_GaugeAndLine_GiveTheVerdict(VerdictKind expected, params string[] readings) =>
        Assert.Equal(expected, Ask.Judge("subcooling", Line410, readings).Verdict);

    // Source: R-32, 1000 kPa absolute is 6.62 °C (Tillner-Roth & Yokozeki 1997).
    [Theory]
    [InlineData(VerdictKind.Within, "898.7 kPa", "25 °C")]
    [InlineData(VerdictKind.Low, "400 kPa", "25 °C")]
    [InlineData(VerdictKind.High, "1400 kPa", "25 °C")]
    public void SaturationSplit_GaugeAndAir_GiveTheVerdict(VerdictKind expected, params string[] readings) =>
        Assert.Equal(expected, Ask.Judge(
            "saturation-split",
            "refrigerant = R32; low = -24 K; high = -12 K; altitude = 0 m; gauge = 20 kPa; thermometer = 1 K",
            readings).Verdict);

    // Source: R-32, 4200 kPa gauge is about 65 °C (Tillner-Roth & Yokozeki 1997, from memory); at 4 °C outdoors no unit
    // runs so.
    [Theory]
    [InlineData(VerdictKind.Impossible, "42 bar", "4 °C")]
    [InlineData(VerdictKind.Impossible, "42 bar", "40 °F")]
    [InlineData(VerdictKind.High, "42 bar", "40 °C")]
    [InlineData(VerdictKind.Low, "12 bar", "20 °C")]
    public void SaturationSplit_FurtherThanAnyUnitGoes_IsAskedBack(VerdictKind expected, params string[] readings)
    {
        var judgement = Ask.Judge("saturation-split",
            "refrigerant = R32; low = 5 K; high = 18 K; most = 55 K; altitude = 0 m; gauge = 20 kPa; thermometer = 1 K",
            readings);
        Assert.Equal(expected, judgement.Verdict);
        Assert.Equal(expected == VerdictKind.Impossible ? "too-far-apart" : null, judgement.PatternKey);
    }

    // Source: R-410A at 118 psig is 4.36 °C dew at sea level and 3.76 °C at 1,500 m (ISO 2533 and Lemmon 2003).
    [Fact]
    public void Superheat_Altitude_MovesTheFigure()
    {
        var sea = Ask.Judge("superheat", Line410, "118 psig", "10 °C").Expected[0].Found!.Si;
        var high = Ask.Judge("superheat", Line410.Replace(
            "altitude = 0 m", "altitude = 1500 m", StringComparison.Ordinal), "118 psig", "10 °C")
                .Expected[0].Found!.Si;
        Assert.Equal(10 - 4.35714396, sea, 0.01);
        Assert.Equal(10 - 3.75852539, high, 0.01);
    }

    [Fact]
    public void Superheat_NoAltitude_IsLessCertain()
    {
        var with = Ask.Judge("superheat", Line410, "118 psig", "50 °F").Expected[0].StandardUncertainty!.Si;
        var without = Ask.Judge("superheat", Line410.Replace("altitude = 0 m; ", "", StringComparison.Ordinal),
            "118 psig", "50 °F").Expected[0].StandardUncertainty!.Si;
        Assert.True(without > with);
    }

    // The R-454B table ends at 50 °C (2902 kPa absolute); beyond it only what is certain is called.
    [Theory]
    [InlineData(VerdictKind.TooCloseToCall, "outside-table", "2900 kPa", "46 °C")]
    [InlineData(VerdictKind.High, null, "2900 kPa", "30 °C")]
    public void Subcooling_BeyondTheTable_IsCalledOnlyWhenCertain(
        VerdictKind expected, string? settle, params string[] readings)
    {
        var judgement = Ask.Judge("subcooling", Line410.Replace("R-410A", "R-454B", StringComparison.Ordinal),
            readings);
        Assert.Equal((expected, settle), (judgement.Verdict, judgement.ToSettleKey));
    }

    [Theory]
    [InlineData(VerdictKind.Within, "24 °C", "12 °C")]
    [InlineData(VerdictKind.Within, "12 °C", "24 °C")]
    [InlineData(VerdictKind.Low, "24 °C", "21 °C")]
    [InlineData(VerdictKind.High, "80 °F", "40 °F")]
    public void TemperatureSplit_TwoTemperatures_GiveTheVerdict(VerdictKind expected, params string[] readings) =>
        Assert.Equal(expected, Ask.Judge("temperature-split", "low = 8 K; high = 14 K; thermometer = 1 K", readings)
            .Verdict);

    // Common practice, no source: in cooling the air comes out colder than it goes in, in heating warmer; the other way
    // round is a fault.
    [Theory]
    [InlineData("temperature-drop", VerdictKind.Within, "24 °C", "13 °C")]
    [InlineData("temperature-drop", VerdictKind.Reversed, "24 °C", "35 °C")]
    [InlineData("temperature-drop", VerdictKind.Reversed, "75 °F", "81 °F")]
    [InlineData("temperature-drop", VerdictKind.Low, "24 °C", "24 °C")]
    [InlineData("temperature-drop", VerdictKind.High, "80 °F", "40 °F")]
    [InlineData("temperature-rise", VerdictKind.Within, "20 °C", "31 °C")]
    [InlineData("temperature-rise", VerdictKind.Reversed, "20 °C", "9 °C")]
    [InlineData("temperature-rise", VerdictKind.Low, "20 °C", "21 °C")]
    public void DirectedSplit_TwoTemperatures_GiveTheVerdict(string judge, VerdictKind expected,
        params string[] readings) =>
        Assert.Equal(expected,
            Ask.Judge(judge, "low = 8 K; high = 14 K; reversed = 1.5 K; thermometer = 1 K", readings).Verdict);

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
