using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Tests.Quantities;

/// <summary>What one of each compound or customary unit is in the base of its kind.</summary>
public sealed class UnitFactorTests
{
    // Source: NIST SP 811, appendix B.9 (from memory): conventional inHg, inH2O and Torr; international inch, foot,
    // pound and Btu; a pound is 16 ounces and 7000 grains; a minute 60 seconds. What SP 811 lacks is made of those by
    // hand, such as Btu/h over cfm and 5/9 K.
    [Theory]
    [InlineData("inHg", QuantityKind.Pressure, 3386.389)]
    [InlineData("inHg_vac", QuantityKind.GaugePressure, -3386.389)]
    [InlineData("inH2O", QuantityKind.Pressure, 249.0889)]
    [InlineData("Torr", QuantityKind.Pressure, 133.3224)]
    [InlineData("mmHg", QuantityKind.AbsolutePressure, 133.3224)]
    [InlineData("kgf/cm2", QuantityKind.Pressure, 98_066.5)]
    [InlineData("atm", QuantityKind.Pressure, 101_325)]
    [InlineData("micron", QuantityKind.Pressure, 0.1333224)]
    [InlineData("micron/min", QuantityKind.PressureRate, 0.002222040)]
    [InlineData("kPa/min", QuantityKind.PressureRate, 16.66667)]
    [InlineData("Pa/min", QuantityKind.PressureRate, 0.01666667)]
    [InlineData("Btu/h", QuantityKind.Power, 0.2930711)]
    [InlineData("Btu/lb", QuantityKind.SpecificEnthalpy, 2326)]
    [InlineData("Btu/lbF", QuantityKind.SpecificHeat, 4186.8)]
    [InlineData("Btu/(h cfm F)", QuantityKind.VolumetricHeatCapacity, 1117.768)]
    [InlineData("Btu/(h cfm lb/lb)", QuantityKind.VolumetricHeat, 620.9824)]
    [InlineData("Btu/(h cfm gr/lb)", QuantityKind.VolumetricHeat, 4_346_877)]
    [InlineData("lb/ft3", QuantityKind.Density, 16.01846)]
    [InlineData("lb min/(h ft3)", QuantityKind.Density, 0.2669744)]
    [InlineData("lb/h", QuantityKind.MassFlow, 1.259979e-4)]
    [InlineData("lb/min", QuantityKind.MassFlow, 7.559873e-3)]
    [InlineData("kg/h", QuantityKind.MassFlow, 2.777778e-4)]
    [InlineData("oz", QuantityKind.Mass, 0.02834952)]
    [InlineData("oz/ft", QuantityKind.MassPerLength, 0.09301021)]
    [InlineData("in", QuantityKind.Length, 0.0254)]
    [InlineData("ft2", QuantityKind.Area, 0.09290304)]
    [InlineData("ft3/lb", QuantityKind.SpecificVolume, 0.06242796)]
    [InlineData("gr/lb", QuantityKind.HumidityRatio, 1.428571e-4)]
    [InlineData("L/min", QuantityKind.AirFlow, 1.666667e-5)]
    [InlineData("L/h", QuantityKind.AirFlow, 2.777778e-7)]
    [InlineData("m3/h", QuantityKind.AirFlow, 2.777778e-4)]
    [InlineData("m3/min", QuantityKind.AirFlow, 0.01666667)]
    [InlineData("cfm", QuantityKind.AirFlow, 4.719474e-4)]
    [InlineData("ohm/kft", QuantityKind.ResistancePerLength, 3.280840e-3)]
    [InlineData("ohm/ft", QuantityKind.ResistancePerLength, 3.280840)]
    public void ToSi_One_IsThePublishedFactor(string code, QuantityKind kind, double si)
    {
        Assert.True(Unit.TryParse(code, kind, out Unit? unit));
        Assert.Equal(si, unit.ToSi(1), Math.Abs(si) * 2e-6);
    }

    // Source: SI brochure: 0 °C is 273.15 K; Fahrenheit and Rankine by NIST SP 811: 32 °F is 0 °C, 491.67 °R.
    [Theory]
    [InlineData("K", 273.15)]
    [InlineData("degF", 32)]
    [InlineData("degR", 491.67)]
    public void ToSi_MeltingIce_IsNoughtCelsius(string code, double value)
    {
        Assert.True(Unit.TryParse(code, QuantityKind.Temperature, out Unit? unit));
        Assert.Equal(0, unit.ToSi(value), 1e-9);
    }

    // Definition of order: equal temperatures are neither above nor below each other.
    [Fact]
    public void Temperature_Order_IsThatOfKelvins()
    {
        (Temperature cold, Temperature same, Temperature warm) =
            (Temperature.FromCelsius(10), Temperature.FromKelvins(283.15), Temperature.FromCelsius(11));
        Assert.True(cold < warm && warm > cold && cold <= warm && warm >= cold);
        Assert.False(warm < cold || cold > warm || warm <= cold || cold >= warm);
        Assert.True(cold <= same && cold >= same);
        Assert.False(cold < same || cold > same);
    }
}
