using DxAssistant.Knowledge.Calculations.Air;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Tests.Calculations;

/// <summary>Moist air below freezing and at the ends of its range.</summary>
public sealed class MoistAirTests
{
    private static readonly AbsolutePressure Sea = AbsolutePressure.StandardAtmosphere;

    // Source: ASHRAE Fundamentals 2017, chapter 1, definition of the thermodynamic wet bulb (from memory): air of ratio
    // W that takes up ice or water of the wet bulb's temperature t* leaves saturated with the same energy, h + (Ws* −
    // W) hw* = hs*. Ice holds −333.4 + 2.1 t* kJ/kg, water 4.186 t*. The heat of sublimation is rounded to 2830 there:
    // two in a thousand.
    [Theory]
    [InlineData(-18, -20)]
    [InlineData(-19.5, -20)]
    [InlineData(-5, -8)]
    [InlineData(3, -2)]
    [InlineData(20, 10)]
    [InlineData(35, 24)]
    public void RatioFromWetBulb_IceOrWater_KeepsTheEnergy(double dryCelsius, double wetCelsius)
    {
        (Temperature dry, Temperature wet) = (Temperature.FromCelsius(dryCelsius), Temperature.FromCelsius(wetCelsius));
        double saturated = MoistAir.Ratio(MoistAir.Saturation(wet).Pascals, Sea), ratio =
            MoistAir.RatioFromWetBulb(dry, wet, Sea);
        double taken = wetCelsius < 0 ? -333.4 + 2.1 * wetCelsius : 4.186 * wetCelsius;
        double before = MoistAir.Enthalpy(dry, ratio) / 1000 + (saturated - ratio) * taken, after =
            MoistAir.Enthalpy(wet, saturated) / 1000;
        Assert.Equal(after, before, 0.002 * 2834 * saturated);
    }

    // Saturated air has its own temperature as its wet bulb, frozen or not.
    [Theory]
    [InlineData(-30)]
    [InlineData(-5)]
    [InlineData(0)]
    [InlineData(25)]
    public void RatioFromWetBulb_WetAsDry_IsSaturated(double celsius)
    {
        Temperature both = Temperature.FromCelsius(celsius);
        double saturated = MoistAir.Ratio(MoistAir.Saturation(both).Pascals, Sea);
        Assert.Equal(saturated, MoistAir.RatioFromWetBulb(both, both, Sea), saturated * 1e-9);
    }

    [Theory]
    [InlineData(-10, 0.5)]
    [InlineData(-2, 0.9)]
    [InlineData(5, 0.2)]
    public void WetBulb_BelowFreezing_GivesTheRatioBack(double celsius, double share)
    {
        Temperature dry = Temperature.FromCelsius(celsius);
        double ratio = MoistAir.Ratio(share * MoistAir.Saturation(dry).Pascals, Sea);
        Temperature wet = MoistAir.WetBulb(dry, ratio, Sea);
        Assert.True(wet < dry && wet.Celsius < 1.5, $"{wet.Celsius}");
        Assert.Equal(ratio, MoistAir.RatioFromWetBulb(dry, wet, Sea), 1e-9);
    }

    // The ends belong to the range; a tenth beyond them does not.
    [Theory]
    [InlineData(-100, -100.1)]
    [InlineData(200, 200.1)]
    public void Saturation_EndOfTheRange_IsCoveredAndNoMore(double end, double beyond)
    {
        AbsolutePressure pressure = MoistAir.Saturation(Temperature.FromCelsius(end));
        Assert.Equal(end, MoistAir.SaturationTemperature(pressure)!.Value.Celsius, 1e-6);
        Assert.Throws<ArgumentOutOfRangeException>(() => MoistAir.Saturation(Temperature.FromCelsius(beyond)));
        Assert.Null(
            MoistAir.SaturationTemperature(AbsolutePressure.FromPascals(pressure.Pascals * (end < 0 ? 0.99 : 1.01))));
    }
}
