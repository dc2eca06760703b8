using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Circuit;

/// <summary>Pressure test with nitrogen, by name.</summary>
internal static class NitrogenCalculations
{
    private const string Formula = "p2 = (p1 + p_atm) T2 / T1 - p_atm, T in K";

    private static readonly ImmutableArray<CalculationInput> Inputs =
    [
        // With the highest air pressure no more than the 20 MPa absolute that the equation of state covers.
        CalculationInput.Gauge("p1_gauge").Within(-110, 19_880), CalculationInput.Temperature("T1").Within(-73, 226),
        CalculationInput.Temperature("T2").Within(-73, 226), CalculationInput.Atmosphere("p_atm"),
    ];

    public static ImmutableArray<Calculation> All => [Ideal("n2-press"), Ideal("n2-press-si"), Real];

    private static Calculation Real { get; } = new(
        "n2-real", "Nitrogen pressure after a change of temperature, real gas",
        "p at equal density by the equation of state; ideal_gas_error = ideal - real", Nitrogen.EquationOfState, Inputs,
        [new("p2_gauge_real_gas", Units.KiloPascalGauge, "p1_gauge"), new("ideal_gas_error", Units.KiloPascal)],
        given =>
        {
            if (Refuse(given) is { } refusal)
                return refusal;
            var (ideal, real) = (After(given, Nitrogen.Ideal), After(given, Nitrogen.Real));
            return given.Answer(real, ideal - real);
        });

    private static Calculation Ideal(string name) => new(
        name, "Nitrogen pressure after a change of temperature", Formula, Nitrogen.IdealLaw, Inputs,
        [new("p2_gauge", Units.PsiGauge, "p1_gauge")],
        given => Refuse(given) ?? given.Answer(After(given, Nitrogen.Ideal)));

    private static CalculationResult? Refuse(Given given) =>
        given["p1_gauge"] + given["p_atm"] > 0 ? null : Given.Invalid("p1_gauge is below a perfect vacuum");

    private static double After(Given given, Func<AbsolutePressure, Temperature, Temperature, AbsolutePressure> law)
    {
        var first = given.Gauge("p1_gauge").AsAbsolute(given.Absolute("p_atm"));
        return law(first, given.Temperature("T1"), given.Temperature("T2")).Pascals - given["p_atm"];
    }
}
