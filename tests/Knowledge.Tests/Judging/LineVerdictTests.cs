using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Knowledge.Tests.Judging;

/// <summary>Verdicts on refrigerant lines and air streams.</summary>
public sealed class LineVerdictTests
{
    private const string Line410 =
        "refrigerant = R-410A; low = 3 K; high = 8 K; altitude = 0 m; gauge = 20 kPa; thermometer = 1 K";

    // Source: hand computed; thermometers of ±0.5 K differ by u = 0.5 K sqrt(2) / sqrt(3) = 0.41 K, 3 K is 7 u from 0.
    [Theory]
    [InlineData(VerdictKind.Within, "22 °C", "22 °C")]
    [InlineData(VerdictKind.Within, "22 °C", "22.3 °C")]
    [InlineData(VerdictKind.High, "22 °C", "26 °C")]
    [InlineData(VerdictKind.TooCloseToCall, "22 °C", "25 °C")]
    public void TemperatureSplit_NoLeast_EqualTemperaturesAreWithin(VerdictKind expected, params string[] readings) =>
        Assert.Equal(expected, Ask.Judge("temperature-split", "low = 0 K; high = 3 K; thermometer = 0.5 K", readings)
            .Verdict);

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
}
