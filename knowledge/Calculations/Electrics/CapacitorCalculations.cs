using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Electrics;

/// <summary>Capacitors, by name.</summary>
internal static class CapacitorCalculations
{
    private static readonly CalculationInput Mains = CalculationInput.Positive("f", Units.Hertz).Within(1e-3, 1e6);

    public static ImmutableArray<Calculation> All =>
    [
        new("cap-factor", "Factor for the capacitor test", "factor = 1 / (2 pi f)", Capacitors.Reactance,
            [Mains], [new("factor", Units.MicroFaradVoltPerAmpere)], given =>
                given.Answer(Capacitors.Factor(Frequency.FromHertz(given["f"])))),
        UnderLoad,
        Tolerance,
    ];

    public static Calculation UnderLoad { get; } = new(
        "cap-load", "Capacitance under load", "C = I / (2 pi f V)", Capacitors.Reactance,
        [CalculationInput.NotNegative("I", Units.Ampere).Within(0, 1e6),
            CalculationInput.Positive("V", Units.Volt).Within(1e-6, 1e6), Mains],
        [new("C", Units.MicroFarad)],
        given => given.Answer(Capacitors.UnderLoad(
            Current.FromAmperes(given["I"]), Voltage.FromVolts(given["V"]), Frequency.FromHertz(given["f"])).Farads));

    public static Calculation Tolerance { get; } = new(
        "cap-tol", "Capacitance against its nameplate",
        "C_min = C_rated (1 - tolerance), C_max = C_rated (1 + tolerance), ends included", Capacitors.Nameplate,
        [Farads("C_measured", Bounds.NotNegative), Farads("C_rated", Bounds.Positive),
            CalculationInput.NotNegative("tolerance", Units.Percent).Within(0, 100)],
        [new("C_min", Units.MicroFarad, "C_rated"), new("C_max", Units.MicroFarad, "C_rated"),
            new("deviation", Units.Percent), new("verdict", null)],
        given =>
        {
            var (rated, measured) = (given["C_rated"], given["C_measured"]);
            var (least, most) = (rated * (1 - given["tolerance"]), rated * (1 + given["tolerance"]));
            return given.Answer(least, most, (measured - rated) / rated,
                Side.IsInside(measured, least, most) ? "pass" : "fail");
        });

    private static CalculationInput Farads(string name, Bounds possible) =>
        CalculationInput.Number(name, Units.MicroFarad, possible).Within(0, 1e9);
}
