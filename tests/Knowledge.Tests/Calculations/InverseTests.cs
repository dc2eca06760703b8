using CsCheck;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Air;
using DxAssistant.Knowledge.Calculations.Circuit;
using DxAssistant.Knowledge.Calculations.Electrics;
using DxAssistant.Knowledge.Calculations.Sensors;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Tests.Calculations;

/// <summary>There and back again gives the start.</summary>
public sealed class InverseTests
{
    [Fact]
    public void Beta_ThereAndBack_IsTheStart() => Gen.Select(
        Gen.Double[-40, 120], Gen.Double[2500, 4500], Gen.Double[1e3, 1e5]).Sample((celsius, beta, ohms) =>
    {
        var (room, b) = (Resistance.FromOhms(ohms), TemperatureDelta.FromKelvins(beta));
        var back = Thermistor.TemperatureByBeta(room, b,
            Thermistor.ResistanceByBeta(room, b, Temperature.FromCelsius(celsius)));
        Assert.Equal(celsius, back!.Value.Celsius, 1e-8);
    });

    [Fact]
    public void SteinhartHart_FitThroughPointsOfALaw_GivesTheLaw() => Gen.Double[8e-4, 1.5e-3].Sample(a =>
    {
        const double b = 2.341077e-4;
        const double c = 8.775468e-8;
        (Resistance, Temperature) Point(double ohms) =>
            (Resistance.FromOhms(ohms), Thermistor.TemperatureBySteinhartHart(
                a, b, c, Resistance.FromOhms(ohms))!.Value);
        var fit = Thermistor.SteinhartHartFit(Point(1_000), Point(10_000), Point(100_000))!.Value;
        Assert.Equal(a, fit.A, 1e-10);
        Assert.Equal(b, fit.B, 1e-10);
        Assert.Equal(c, fit.C, 1e-12);
    });

    [Fact]
    public void Platinum_ThereAndBack_IsTheStart() => Gen.Double[-199, 849].Sample(celsius => Assert.Equal(
        celsius, PlatinumSensor.TemperatureAt(Resistance.FromOhms(1000),
            PlatinumSensor.ResistanceAt(Resistance.FromOhms(1000), Temperature.FromCelsius(celsius)))!.Value.Celsius,
                1e-6));

    [Fact]
    public void Winding_ThereAndBack_IsTheStart() => Gen.Select(
        Gen.Double[-40, 150], Gen.Double[-40, 150], Gen.Double[0.1, 500]).Sample((one, two, ohms) =>
    {
        var there = Winding.AtTemperature(Resistance.FromOhms(ohms), Temperature.FromCelsius(one),
            Temperature.FromCelsius(two));
        Assert.Equal(two, Winding.HotCelsius(Resistance.FromOhms(ohms), Temperature.FromCelsius(one), there), 1e-8);
    });

    [Fact]
    public void Star_TerminalsOfPhases_GiveThePhasesBack() =>
        Gen.Select(Gen.Double[0.1, 10], Gen.Double[0.1, 10], Gen.Double[0.1, 10]).Sample((one, two, three) =>
    {
        var (first, second, third) = Winding.StarPhases(one + two, two + three, three + one);
        Assert.Equal(one, first, 1e-12);
        Assert.Equal(two, second, 1e-12);
        Assert.Equal(three, third, 1e-12);
    });

    [Fact]
    public void Saturation_OfWater_ThereAndBack_IsTheStart() =>
        Gen.Double[-90, 190].Where(celsius => Math.Abs(celsius) > 0.05).Sample(celsius => Assert.Equal(
        celsius, MoistAir.SaturationTemperature(MoistAir.Saturation(Temperature.FromCelsius(celsius)))!.Value.Celsius,
            1e-6));

    [Fact]
    public void MoistAir_WetBulbOfRatio_GivesTheRatioBack() =>
        Gen.Select(Gen.Double[5, 45], Gen.Double[0.05, 0.999]).Sample((celsius, share) =>
    {
        var (dry, pressure) = (Temperature.FromCelsius(celsius), AbsolutePressure.StandardAtmosphere);
        var ratio = MoistAir.Ratio(share * MoistAir.Saturation(dry).Pascals, pressure);
        Assert.Equal(ratio, MoistAir.RatioFromWetBulb(dry, MoistAir.WetBulb(dry, ratio, pressure), pressure), 1e-5);
    });

    [Fact]
    public void Gauge_ThereAndBack_IsTheStart() => Gen.Double[-90_000, 5e6].Sample(pascals => Assert.Equal(
        pascals, GaugePressure.FromPascals(pascals).AsAbsolute(AbsolutePressure.StandardAtmosphere)
            .AsGauge(AbsolutePressure.StandardAtmosphere).Pascals, 1e-6));

    // Source: equation of state of nitrogen, Span et al. 2000; at low pressure it is an ideal gas.
    [Fact]
    public void Nitrogen_LowPressure_IsIdeal()
    {
        var (first, warm, cold) = (AbsolutePressure.FromPascals(10_000), Temperature.FromCelsius(40),
            Temperature.FromCelsius(0));
        Assert.Equal(Nitrogen.Ideal(first, warm, cold).Pascals, Nitrogen.Real(first, warm, cold).Pascals,
            tolerance: 1.0);
        Assert.Throws<ArgumentOutOfRangeException>(() => Nitrogen.Real(AbsolutePressure.FromPascals(30e6), warm, cold));
    }
}
