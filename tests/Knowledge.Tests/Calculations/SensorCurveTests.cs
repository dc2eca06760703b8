using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Sensors;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Tests.Calculations;

public sealed class SensorCurveTests
{
    private static SensorCurve Named(string name) => PublishedCurves.Get(name, Resistance.FromOhms(10_000));

    public static TheoryData<string> Names() => [.. PublishedCurves.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void TryTemperature_OfResistance_GivesTheTemperatureBackAndFalls(string name)
    {
        var curve = Named(name);
        var last = double.PositiveInfinity;
        for (var kelvins = curve.Coldest.Kelvins; kelvins <= curve.Hottest.Kelvins; kelvins += 0.31)
        {
            Assert.True(curve.TryResistance(Temperature.FromKelvins(kelvins), out var resistance));
            Assert.True(resistance.Ohms < last);
            Assert.True(curve.TryTemperature(resistance, out var back));
            Assert.Equal(kelvins, back.Kelvins, 1e-6);
            last = resistance.Ohms;
        }
    }

    // Source: published table of the 10 kΩ, 3435 K thermistor: -40 °C 188.5 kΩ, 100 °C 973.1 Ω; ends of the table
    // included.
    [Theory]
    [InlineData(-50, 329_500)]
    [InlineData(-40, 188_500)]
    [InlineData(100, 973.1)]
    [InlineData(110, 757.6)]
    public void TryResistance_TableLines_AreExact(double celsius, double ohms)
    {
        Assert.True(Named("AT-10k-3435").TryResistance(Temperature.FromCelsius(celsius), out var resistance));
        Assert.Equal(ohms, resistance.Ohms, ohms * 1e-9);
        Assert.True(Named("AT-10k-3435").TryTemperature(Resistance.FromOhms(ohms), out var back));
        Assert.Equal(celsius, back.Celsius, 1e-6);
    }

    // Source: table J of a data-logger manual against its Steinhart-Hart coefficients: 0 °C 32,650.9 Ω, -40 °C
    // 336,103.2 Ω.
    [Theory]
    [InlineData(0, 32_650.9)]
    [InlineData(-40, 336_103.2)]
    public void SteinhartHart_TableLines_AgreeWithin2Hundredths(double celsius, double ohms)
    {
        Assert.True(Named("J-10k").TryTemperature(Resistance.FromOhms(ohms), out var temperature));
        Assert.Equal(celsius, temperature.Celsius, 0.02);
    }

    // Source: slope of the beta law, -B/T² = -4.44 %/K at 25 °C for B = 3950 K.
    [Fact]
    public void SlopeAt_BetaCurve_IsThatOfTheLaw()
    {
        var curve = SensorCurve.Beta(Resistance.FromOhms(10_000), TemperatureDelta.FromKelvins(3950),
            Temperature.FromCelsius(-40), Temperature.FromCelsius(125));
        Assert.Equal(-444.35, curve.SlopeAt(Temperature.FromCelsius(25)), 0.1);
        Assert.Throws<ArgumentOutOfRangeException>(() => curve.SlopeAt(Temperature.FromCelsius(130)));
    }

    // Source: tests/Reference/check-values.json, ntc-beta-t-01: 10 kΩ, B = 3435 K, 27.28 kΩ is 1.10992312 °C.
    [Fact]
    public void TryTemperature_BetaCurve_IsThatOfTheLaw()
    {
        var curve = SensorCurve.Beta(Resistance.FromOhms(10_000), TemperatureDelta.FromKelvins(3435),
            Temperature.FromCelsius(-40), Temperature.FromCelsius(125));
        Assert.True(curve.TryTemperature(Resistance.FromOhms(27_280), out var temperature));
        Assert.Equal(1.10992312, temperature.Celsius, 1e-6);
        Assert.False(curve.TryTemperature(Resistance.FromOhms(0), out _));
        Assert.False(curve.TryTemperature(Resistance.FromOhms(1), out _));
    }

    [Theory]
    [InlineData("0:10")]
    [InlineData("0:10 0:9")]
    [InlineData("0:10 10:5 20:6")]
    [InlineData("0:10 10:0")]
    [InlineData("-300:10 10:5")]
    public void TryFromTable_BadPoints_NamesTheProblem(string rows)
    {
        var points = rows.Split(' ').Select(row => row.Split(':'))
            .Select(cells => new SensorPoint(int.Parse(cells[0], System.Globalization.CultureInfo.InvariantCulture),
                int.Parse(cells[1], System.Globalization.CultureInfo.InvariantCulture)));
        Assert.False(SensorCurve.TryFromTable(points, out _, out var problem));
        Assert.NotEmpty(problem);
    }

    // A platinum sensor rises; source: IEC 60751, Pt1000.
    [Fact]
    public void TryFromTable_RisingTable_ReadsBothWays()
    {
        SensorPoint[] points = [new(0, 1000), new(40, 1155.408), new(20, 1077.935)];
        Assert.True(SensorCurve.TryFromTable(points, out var curve, out _));
        Assert.True(curve.TryTemperature(Resistance.FromOhms(1097.3), out var temperature));
        Assert.Equal(25, temperature.Celsius, 0.2);
    }

    [Fact]
    public void SteinhartHart_NegativeCoefficient_Throws() => Assert.Throws<ArgumentOutOfRangeException>(() =>
        SensorCurve.SteinhartHart(1e-3, -1e-4, 1e-7, Temperature.FromCelsius(0), Temperature.FromCelsius(50)));
}
