using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Circuit;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Tests.Calculations;

/// <summary>Saturation of the pure refrigerants against their equations of state, solved here for equal pressure and
/// equal Gibbs energy of liquid and vapour.</summary>
/// <remarks>
/// Sources: Tillner-Roth &amp; Yokozeki 1997, Kamei et al. 1995, Lemmon et al. 2009; coefficients
/// as in tests/Reference/refrigerants.json, range −60 to 70 °C as stated there.
/// </remarks>
public sealed class EquationOfStateTests
{
    private const double Share = 0.0005;

    public static TheoryData<string, double> Points()
    {
        var data = new TheoryData<string, double>();
        foreach (var name in new[] { "R32", "R22", "R290" })
            for (var celsius = -60.0; celsius <= 70; celsius += 2.5)
                data.Add(name, celsius);
        return data;
    }

    [Theory]
    [MemberData(nameof(Points))]
    public void TryPressure_EquationOfState_AgreesBothWays(string name, double celsius)
    {
        var curve = Refrigerant.Find(name)!.Dew!;
        Assert.True(curve.TryPressure(Temperature.FromCelsius(celsius), out var pressure));
        var solved = HelmholtzFluid.Named(name).SaturationPascals(celsius + 273.15, pressure.Pascals);
        Assert.Equal(solved, pressure.Pascals, solved * Share);
        Assert.True(curve.TryTemperature(AbsolutePressure.FromPascals(solved), out var temperature));
        Assert.Equal(celsius, temperature.Celsius, Share * solved * curve.SlopeAt(temperature));
    }
}
