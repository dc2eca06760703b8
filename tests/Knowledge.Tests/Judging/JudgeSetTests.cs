using System.Globalization;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Tests.Calculations;

namespace DxAssistant.Knowledge.Tests.Judging;

/// <summary>
/// What is shown of each reading of a set, which one stands out, and how sure a figure made of several is.
/// </summary>
public sealed class JudgeSetTests
{
    private const string Diodes = "low = 0.3 V; high = 0.7 V; spread = 0.05 V; meter = 1 % + 2 × 0.001 V";
    private const string Split = "nominal = 240 V; below = 5 %; above = 5 %; meter = 1 % + 3 × 0.1 V";
    private const string Winding = "limit = 5 %; meter = 0.5 % + 2 × 0.001 Ω";
    private const string Phases = "limit = 3 %; meter = 1 % + 3 × 0.1 V";

    // Common practice, no source: a shorted diode counts before an open one, an open one before a drop that differs;
    // the first of equals.
    [Theory]
    [InlineData(VerdictKind.Within, null, "0.45 V", "0.45 V", "0.45 V", "0.44 V", "0.45 V", "0.45 V")]
    [InlineData(VerdictKind.OpenCircuit, "N-V", "0.45 V", "0.45 V", "0.45 V", "0.45 V", Ask.Open, "0.45 V")]
    [InlineData(VerdictKind.OpenCircuit, "P-V", "0.45 V", Ask.Open, "0.45 V", "0.45 V", Ask.Open, "0.45 V")]
    [InlineData(VerdictKind.ShortCircuit, "P-W", "0.45 V", "0.45 V", Ask.Short, "0.45 V", "0.45 V", "0.45 V")]
    [InlineData(VerdictKind.ShortCircuit, "N-W", "0.45 V", Ask.Open, "0.45 V", "0.45 V", "0.45 V", Ask.Short)]
    [InlineData(VerdictKind.ShortCircuit, "N-U", "0.45 V", "0.45 V", "0.45 V", "0.02 V", "0.45 V", "0.45 V")]
    [InlineData(VerdictKind.OpenCircuit, "P-U", "1.9 V", "0.45 V", "0.45 V", "0.45 V", "0.45 V", "0.45 V")]
    [InlineData(VerdictKind.Unequal, "P-W", "0.45 V", "0.46 V", "0.60 V", "0.45 V", "0.45 V", "0.45 V")]
    [InlineData(VerdictKind.Unequal, "N-U", "0.45 V", "0.45 V", "0.45 V", "0.60 V", "0.45 V", "0.46 V")]
    [InlineData(VerdictKind.Unequal, "N-V", "0.45 V", "0.45 V", "0.45 V", "0.45 V", "0.35 V", "0.46 V")]
    public void ModuleDiodes_Six_NameTheOddOne(VerdictKind verdict, string? odd, params string[] readings)
    {
        Judgement judgement = Ask.Judge("module-diodes", Diodes, readings);
        Assert.Equal((verdict, odd), (judgement.Verdict, judgement.OddOneOut));
    }

    // Source: JCGM 100, of a limit of error a over the square root of 3: 1 % of 0.5 V and 0.002 V.
    [Fact]
    public void ModuleDiodes_Expected_ShowsEachReadingAndItsBand()
    {
        Judgement judgement =
            Ask.Judge("module-diodes", Diodes, "0.5 V", Ask.Open, "0.45 V", "0.45 V", "0.45 V", Ask.Short);
        Assert.Equal(["P-U", "P-V", "P-W", "N-U", "N-V", "N-W"], judgement.Expected.Select(band => band.Name));
        Assert.All(judgement.Expected, band => Assert.Equal((0.3, 0.7), (band.Low!.Si, band.High!.Si)));
        Assert.Equal([0.5, null, 0.45, 0.45, 0.45, null], judgement.Expected.Select(band => band.Found?.Si));
        Assert.Equal(0.007 / Math.Sqrt(3), judgement.Expected[0].StandardUncertainty!.Si, 1e-9);
        Assert.Null(judgement.Expected[1].StandardUncertainty);
    }

    // Definition: 5 % either side of 240 V, and of half of it from each leg to ground; the leg further from its half
    // stands out.
    [Fact]
    public void SplitSupply_Expected_IsNominalAndHalf()
    {
        Judgement judgement = Ask.Judge("split-supply", Split, "240 V", "120 V", "120 V");
        Assert.Equal([(228.0, 240.0, 252.0), (114, 120, 126), (114, 120, 126)],
            judgement.Expected.Select(band => (Round(band.Low!.Si), Round(band.Nominal!.Si), Round(band.High!.Si))));
        Assert.Equal((null, null), (judgement.OddOneOut, judgement.PatternKey));
        Assert.Equal("L2-ground", Ask.Judge("split-supply", Split, "222 V", "120 V", "102 V").OddOneOut);
        Assert.Equal("L1-ground", Ask.Judge("split-supply", Split, "222 V", "102 V", "120 V").OddOneOut);
    }

    // Source: Kirchhoff: a phase lost and held by equal windings in the middle of the two others, whichever it is.
    [Theory]
    [InlineData("L3", "400 V", "200 V", "200 V")]
    [InlineData("L1", "200 V", "400 V", "200 V")]
    [InlineData("L2", "200 V", "200 V", "400 V")]
    public void VoltageUnbalance_PhaseLost_IsNamedWhereverItIs(string odd, params string[] readings)
    {
        Judgement judgement = Ask.Judge("voltage-unbalance", Phases, readings);
        Assert.Equal((VerdictKind.High, "phase-lost", odd),
            (judgement.Verdict, judgement.PatternKey, judgement.OddOneOut));
    }

    // Definition: none stands out of a set in balance; what was read is shown where it was a number, and nominal where
    // the page has one.
    [Fact]
    public void WindingBalance_Set_ShowsWhatWasRead()
    {
        Judgement even = Ask.Judge("winding-balance", Winding + "; nominal = 1 Ω", "1 Ω", "1 Ω", "1.01 Ω");
        Assert.Equal((VerdictKind.Within, null, null), (even.Verdict, even.OddOneOut, even.PatternKey));
        Assert.Equal(["U-V", "V-W", "U-W", "mean"], even.Expected.Select(band => band.Name));
        Judgement open = Ask.Judge("winding-balance", Winding + "; nominal = 1.1 Ω", Ask.Open, Ask.Open, "1.1 Ω");
        Assert.Equal([null, null, 1.1], open.Expected.Select(band => band.Found?.Si));
        Assert.All(open.Expected, band => Assert.Equal(1.1, band.Nominal?.Si));
        Assert.All(Ask.Judge("winding-balance", Winding, Ask.Open, Ask.Open, "1.1 Ω").Expected,
            band => Assert.Null(band.Nominal));
    }

    // Common practice, no source: a hundred times nominal is open, and 100 kΩ is open whatever the page says.
    [Theory]
    [InlineData("nominal = 1.1 Ω", "200 Ω", "200 Ω", "1.1 Ω")]
    [InlineData("nominal = 2 kΩ", "150 kΩ", "150 kΩ", "2 kΩ")]
    public void WindingBalance_FarAboveNominal_IsOpen(string nominal, params string[] readings)
    {
        Judgement judgement = Ask.Judge("winding-balance", Winding + "; " + nominal, readings);
        Assert.Equal((VerdictKind.OpenCircuit, "one-terminal-open"), (judgement.Verdict, judgement.PatternKey));
    }

    // Source: JCGM 100 5.1.2, by hand. Share of 1, 1, 2: 3 × 2 / 4 - 1; slopes 3/4 × 1/2 to the odd one and -3/4 × 1/2
    // to each other.
    [Fact]
    public void OddOne_ShareUncertainty_IsThatOfTheGuide()
    {
        OddOne odd = OddOne.Of([1, 1, 2]);
        Assert.Equal((2, 0.5), (odd.Index, Round(odd.Share)));
        Assert.Equal(0.01 * Math.Sqrt(3) * 0.375, odd.ShareUncertainty(0.01), 1e-9);
        // 1, 1, 4: 3 × 4 / 6 - 1 = 1; slopes 1/2 × 1/3 and -1/2 × 2/3 twice.
        Assert.Equal(0.01 * Math.Sqrt((1.0 / 36) + (2.0 / 9)), OddOne.Of([1, 1, 4]).ShareUncertainty(0.01), 1e-9);
        Assert.Equal(1, OddOne.Of([10, 3, 10]).Index);
    }

    // Source: IEEE 43, halving each 10 K: 100 MΩ at 25 °C is 35.355 MΩ at 40 °C; JCGM 100 by hand: 0.35355 × 5.2 MΩ /
    // √3 of the meter and 35.355 MΩ × ln 2 / 10 K × 1 K / √3 of the thermometer, in squares.
    [Fact]
    public void InsulationCorrected_Figure_HasBothUncertainties()
    {
        ExpectedBand band = Ask.Judge("insulation-corrected",
            "minimum = 5 MΩ; meter = 5 % + 2 × 0.1 MΩ; thermometer = 1 K", "100 MΩ", "25 °C").Expected[0];
        double factor = Math.Pow(0.5, 1.5);
        Assert.Equal(100e6 * factor, band.Found!.Si, 1.0);
        double meter = factor * 5.2e6 / Math.Sqrt(3), warmth = 100e6 * factor * Math.Log(2) / 10 / Math.Sqrt(3);
        Assert.Equal(Math.Sqrt(meter * meter + warmth * warmth), band.StandardUncertainty!.Si, 1000.0);
    }

    // Source: JCGM 100: the gauge's part is its limit over √3 times the slope of the saturation curve, here by the
    // calculation at 1 kPa either side; what the air and the thermometer add is the same with either gauge.
    [Fact]
    public void Superheat_Uncertainty_GrowsWithTheGaugeByTheSlopeOfTheCurve()
    {
        double slope = (Saturation(1102.325) - Saturation(1100.325)) / 2;
        double fine = Superheat(1, 1, "10 °C").StandardUncertainty!.Si, coarse =
            Superheat(100, 1, "10 °C").StandardUncertainty!.Si;
        Assert.Equal(slope * slope * (100 * 100 - 1) / 3, coarse * coarse - fine * fine,
            slope * slope * 10_000 / 3 * 0.01);
    }

    // Definition: what is less sure of the two is read again: the temperature when the thermometer is, both when the
    // gauge is.
    [Theory]
    [InlineData(1, 2, ToSettle.WaitTemperatureSettle)]
    [InlineData(100, 0.01, ToSettle.Repeat)]
    public void Superheat_OnItsLimit_SaysWhichToRepeat(double gauge, double thermometer, string settle)
    {
        double at = 10 + 3 - Superheat(gauge, thermometer, "10 °C").Found!.Si;
        Judgement judgement = Line(gauge, thermometer, at.ToString("0.####", CultureInfo.InvariantCulture) + " °C");
        Assert.Equal((VerdictKind.TooCloseToCall, settle), (judgement.Verdict, judgement.ToSettleKey));
    }

    // Source: SI brochure: an uncertainty of a temperature is a difference, of its own degree.
    [Theory]
    [InlineData("46 °C", "K", 1)]
    [InlineData("114.8 °F", "F_diff", 1.8)]
    public void Band_Temperature_HasAnUncertaintyOfItsDegree(string reading, string unit, double limit)
    {
        ExpectedBand band =
            Assert.Single(Ask.Judge("band", "low = 41 °C; high = 51 °C; meter = ± 1 K", reading).Expected);
        Assert.Equal(unit, band.StandardUncertainty!.Unit.Code);
        Assert.Equal(limit / Math.Sqrt(3), band.StandardUncertainty.Value, 1e-9);
    }

    private static double Saturation(double kilopascals) => ((CalculationValue.Number)ChangedCase.Output("ref-tsat-01",
        string.Create(CultureInfo.InvariantCulture, $"p={kilopascals}; curve=dew"), "T_sat")).Quantity.Value;

    private static Judgement Line(double gauge, double thermometer, string line) =>
        Ask.Judge("superheat", string.Create(
            CultureInfo.InvariantCulture,
            $"refrigerant = R-32; low = 3 K; high = 8 K; altitude = 0 m; gauge = {gauge} kPa; thermometer = {thermometer} K"),
            "1000 kPa_gauge", line);

    private static ExpectedBand Superheat(double gauge, double thermometer, string line) =>
        Line(gauge, thermometer, line).Expected.Single(band => band.Found is not null);

    private static double Round(double value) => Math.Round(value, 9);
}
