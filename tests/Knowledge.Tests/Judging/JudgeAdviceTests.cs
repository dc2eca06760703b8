using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Knowledge.Tests.Judging;

/// <summary>
/// What a judge shows beside its verdict: the band, how sure the figure is, and what would settle it.
/// </summary>
public sealed class JudgeAdviceTests
{
    // Definition: the band of the page, whatever was read; an end that the page leaves out stays out.
    [Theory]
    [InlineData("low = 41 Ω; high = 51 Ω; meter = 1 %", "46 Ω", 41.0, 51.0)]
    [InlineData("low = 41 Ω; high = 51 Ω; meter = 1 %", Ask.Open, 41.0, 51.0)]
    [InlineData("low = 41 Ω; meter = 1 %", "46 Ω", 41.0, null)]
    [InlineData("low = 41 Ω; meter = 1 %", Ask.Open, 41.0, null)]
    [InlineData("high = 51 Ω; meter = 1 %", "46 Ω", null, 51.0)]
    [InlineData("high = 51 Ω; meter = 1 %", Ask.Short, null, 51.0)]
    public void Band_Expected_IsThatOfThePage(string inputs, string reading, double? low, double? high)
    {
        ExpectedBand band = Assert.Single(Ask.Judge("band", inputs, reading).Expected);
        Assert.Equal((low, high), (band.Low?.Si, band.High?.Si));
    }

    // Common practice, no source: a temperature that has not settled is waited for, a small resistance is read with
    // four wires, any other reading is taken in a better range. Each reading lies on its limit.
    [Theory]
    [InlineData("band", "low = 41 Ω; high = 51 Ω; meter = 1 %", ToSettle.BetterRange, "51 Ω")]
    [InlineData("band", "low = 41 °C; high = 51 °C; meter = ± 1 K", ToSettle.WaitTemperatureSettle, "51 °C")]
    [InlineData("winding-balance", "limit = 5 %; meter = 0.5 % + 2 × 0.001 Ω", ToSettle.BetterRange, "10 Ω", "10 Ω",
        "10.77 Ω")]
    [InlineData("winding-balance", "limit = 5 %; meter = 0.5 % + 2 × 0.001 Ω", ToSettle.FourWire, "0.5 Ω", "0.5 Ω",
        "0.5385 Ω")]
    public void Judge_TooCloseToCall_SaysWhatWouldSettleIt(string judge, string inputs, string settle,
        params string[] readings)
    {
        Judgement judgement = Ask.Judge(judge, inputs, readings);
        Assert.Equal((VerdictKind.TooCloseToCall, settle), (judgement.Verdict, judgement.ToSettleKey));
    }

    // Source: JCGM 100 (GUM) 5.1.6, by hand: of a quotient the relative uncertainties add in squares. 1 % of each is 1
    // % / √3 twice, 0.8165 % of 32.5 µF; with 3 counts of 0.01 A more, 0.067 A / √3 in 3.7 A and 1 % / √3, 1.1943 %.
    [Theory]
    [InlineData("meter = 1 %", 0.008165)]
    [InlineData("meter = 1 % + 3 × 0.01 A", 0.011943)]
    public void Capacitor_Uncertainty_IsOfCurrentAndVoltage(string meter, double share)
    {
        ExpectedBand band =
            Assert.Single(Ask.Judge("capacitor", "rated = 35 µF; tolerance = 6 %; frequency = 60 Hz; " + meter,
                "3.7 A", "302 V").Expected);
        Assert.Equal(3.7 / (2 * Math.PI * 60 * 302), band.Found!.Si, 1e-9);
        Assert.Equal(share, band.StandardUncertainty!.Si / band.Found.Si, 1e-5);
    }

    // Definition: a capacitor under load has a voltage and a current that is not negative.
    [Theory]
    [InlineData(false, "0 A", "302 V")]
    [InlineData(true, "-1 A", "302 V")]
    [InlineData(true, "3.7 A", "1 V")]
    public void Capacitor_ReadingsThatCannotBe_AreImpossible(bool impossible, params string[] readings) =>
        Assert.Equal(impossible,
            Ask.Judge("capacitor", "rated = 35 µF; tolerance = 6 %; frequency = 60 Hz; meter = 1 %",
                readings).Verdict == VerdictKind.Impossible);

    // Definition: the odd one of a set lies furthest from the mean; 1, 1, 2 has its mean at 4/3. Band: 5 % of the mean
    // either side.
    [Fact]
    public void WindingBalance_Expected_IsTheMeanAndItsLimits()
    {
        Judgement judgement =
            Ask.Judge("winding-balance", "limit = 5 %; meter = 0.5 % + 2 × 0.001 Ω", "1 Ω", "1 Ω", "2 Ω");
        foreach (ExpectedBand band in judgement.Expected.Take(3))
        {
            Assert.Equal(4.0 / 3, band.Nominal!.Si, 1e-9);
            Assert.Equal(4.0 / 3 * 0.95, band.Low!.Si, 1e-9);
            Assert.Equal(4.0 / 3 * 1.05, band.High!.Si, 1e-9);
        }
    }
}
