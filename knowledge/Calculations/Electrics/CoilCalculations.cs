using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Electrics;

/// <summary>Coils of expansion valves and reversing valves, by name.</summary>
internal static class CoilCalculations
{
    public static ImmutableArray<Calculation> All =>
    [
        new("coil-r", "Valve coil against its rating at its temperature",
            "R = R_20 (235 + T) / (235 + 20), pass within R (1 - tolerance) to R (1 + tolerance), ends included",
            Winding.TemperatureLaw,
            [Ohms("R_20"), CalculationInput.Temperature("T").Within(-60, 200),
                CalculationInput.NotNegative("tolerance", Units.Percent).Within(0, 100), Measured],
            [new("R", Units.Ohm, "R_20"), new("deviation", Units.Percent), new("verdict", null)], Judge),
    ];

    private static CalculationInput Measured { get; } =
        CalculationInput.NotNegative("R_measured", Units.Ohm).Within(0, 1e12);

    private static CalculationInput Ohms(string name) => CalculationInput.Positive(name, Units.Ohm).Within(1e-6, 1e9);

    private static CalculationResult Judge(Given given)
    {
        var expected =
            Winding.AtTemperature(given.Resistance("R_20"), Temperature.FromCelsius(20), given.Temperature("T"));
        var (measured, tolerance) = (given["R_measured"], given["tolerance"]);
        var inside = Side.IsInside(measured, expected.Ohms * (1 - tolerance), expected.Ohms * (1 + tolerance));
        return given.Answer(expected, measured / expected.Ohms - 1, inside ? "pass" : "fail");
    }
}
