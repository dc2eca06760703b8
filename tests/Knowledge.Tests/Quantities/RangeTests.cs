using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Air;
using DxAssistant.Knowledge.Calculations.Circuit;
using DxAssistant.Knowledge.Calculations.Electrics;
using DxAssistant.Knowledge.Calculations.Sensors;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Tests.Quantities;

/// <summary>Every documented range of a factory or a function has its exception, naming argument, value, range and
/// unit.</summary>
public sealed class RangeTests
{
    public static TheoryData<string, Action> Outside() => new()
    {
        { "temperature, K", () => Temperature.FromKelvins(-1) },
        { "temperature, °C", () => Temperature.FromCelsius(-274) },
        { "temperature, °F", () => Temperature.FromFahrenheit(double.NaN) },
        { "difference", () => TemperatureDelta.FromKelvins(20_000) },
        { "absolute pressure", () => AbsolutePressure.FromPascals(-1) },
        { "gauge pressure", () => GaugePressure.FromPascals(-200_000) },
        { "below a vacuum", () => GaugePressure.FromPascals(-100_000)
            .AsAbsolute(AbsolutePressure.FromPascals(50_000)) },
        { "resistance", () => Resistance.FromOhms(-1) },
        { "voltage", () => Voltage.FromVolts(double.PositiveInfinity) },
        { "current", () => Current.FromAmperes(-1) },
        { "capacitance", () => Capacitance.FromFarads(-1) },
        { "frequency", () => Frequency.FromHertz(-1) },
        { "speed", () => RotationalSpeed.FromRevolutionsPerMinute(-1) },
        { "length", () => Length.FromMeters(-1) },
        { "area", () => Area.FromSquareMeters(-1) },
        { "volume", () => Volume.FromCubicMeters(-1) },
        { "mass", () => Mass.FromKilograms(-1) },
        { "density", () => Density.FromKilogramsPerCubicMeter(-1) },
        { "air flow", () => AirFlow.FromCubicMetersPerSecond(-1) },
        { "altitude", () => StandardAtmosphere.PressureAt(12_000) },
        { "saturation of water", () => MoistAir.Saturation(Temperature.FromCelsius(250)) },
        { "platinum", () => PlatinumSensor.ResistanceAt(Resistance.FromOhms(100), Temperature.FromCelsius(900)) },
        { "thermosetting", () => Insulation.ThermosettingFactor(Temperature.FromCelsius(5)) },
        { "derating", () => Unbalance.Derating(6) },
        { "dead supply", () => Unbalance.OfThree(0, 0, 0) },
    };

    [Theory]
    [MemberData(nameof(Outside))]
    public void Factory_OutsideItsRange_Throws(string what, Action make)
    {
        var exception = Assert.Throws<ArgumentOutOfRangeException>(make);
        Assert.True(exception.Message.Contains("must be", StringComparison.Ordinal), what);
    }

    [Fact]
    public void In_UnitOfAnotherKind_Throws() =>
        Assert.Throws<ArgumentException>(() => new Quantity(1, Units.Ohm).In(Units.Volt));

    // Source: definitions; −40 °F is −40 °C, 0 °C is 273.15 K.
    [Fact]
    public void Temperature_FromEachScale_Agrees()
    {
        Assert.Equal(-40, Temperature.FromFahrenheit(-40).Celsius, 1e-9);
        Assert.Equal(273.15, Temperature.FromCelsius(0).Kelvins, 1e-12);
        Assert.True(Temperature.FromCelsius(1) > Temperature.FromKelvins(273.15));
        Assert.Equal(10, (Temperature.FromCelsius(30) - Temperature.FromCelsius(20)).Kelvins, 1e-9);
    }

    // Rounded in the last shown digit, never an exponent where a plain number will do, the same in every culture.
    [Theory]
    [InlineData(0.1 + 0.2, "0.3")]
    [InlineData(1234567.8, "1234568")]
    [InlineData(-0.00012, "-0.00012")]
    [InlineData(0, "0")]
    [InlineData(1e-9, "1e-9")]
    public void NumberText_AnyNumber_IsPlain(double value, string text) => Assert.Equal(text, NumberText.Of(value));
}
