using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Sensors;

/// <summary>Thermistors, by name.</summary>
internal static class ThermistorCalculations
{
    private static readonly CalculationInput Room = CalculationInput.Positive("R25", Units.Ohm).Within(1e-3, 1e9);
    private static readonly CalculationInput Beta = CalculationInput.Positive("B", Units.Kelvin).Within(100, 10_000);
    private static readonly CalculationInput Measured = CalculationInput.Positive("R", Units.Ohm).Within(1e-6, 1e12);
    private static readonly CalculationInput Warmth = CalculationInput.Temperature("T").Within(-150, 500);
    private static readonly Citation DataBook = new("Thermistor maker's data book, standardized R/T characteristics",
        "worked example");

    public static ImmutableArray<Calculation> All =>
    [
        new("ntc-alpha", "Slope of a thermistor", "alpha = -B / T^2", Thermistor.BetaLaw,
            [Beta, Warmth], [new("alpha", Units.PercentPerKelvin)],
            given => given.Answer(Thermistor.AlphaPerKelvin(given.Delta("B"), given.Temperature("T")))),
        new("ntc-b", "Beta of a thermistor from two points", "B = T1 T2 / (T2 - T1) ln(R1 / R2)", Thermistor.BetaLaw,
            [Point("R1"), Warm("T1"), Point("R2"), Warm("T2")], [new("B", Units.Kelvin)], FindBeta),
        new("ntc-beta-r", "Resistance of a thermistor by the beta law", "R = R25 exp(B (1/T - 1/298.15 K))",
            Thermistor.BetaLaw,
            [Room, Beta, Warmth], [new("R", Units.Ohm)], FindResistance),
        ByBeta,
        new("ntc-interp", "Resistance of a thermistor near a table point",
            "R = R25 ratio exp(alpha Tx^2 (1/T - 1/Tx))", DataBook,
            [Room, CalculationInput.Positive("ratio_at_Tx", Units.One).Within(1e-6, 1e6),
                CalculationInput.Positive("alpha_at_Tx", Units.PercentPerKelvin).Within(0.01, 50), Warm("Tx"), Warmth],
            [new("R", Units.Ohm)], Interpolate),
        new("ntc-sh-fit", "Steinhart-Hart coefficients through three points",
            "1/T = A + B ln R + C (ln R)^3 at three points", Thermistor.SteinhartHartLaw,
            [Point("R1"), Warm("T1"), Point("R2"), Warm("T2"), Point("R3"), Warm("T3")],
            [new("A", Units.PerKelvin), new("B", Units.PerKelvin), new("C", Units.PerKelvin)], Fit),
        new("ntc-sh-t", "Temperature of a thermistor by Steinhart-Hart", "1/T = A + B ln R + C (ln R)^3",
            Thermistor.SteinhartHartLaw,
            [Coefficient("A"), Coefficient("B"), Coefficient("C"), Measured], [new("T", Units.Celsius)], SteinhartHart),
    ];

    public static Calculation ByBeta { get; } = new(
        "ntc-beta-t", "Temperature of a thermistor by the beta law", "T = 1 / (1/298.15 K + ln(R / R25) / B)",
        Thermistor.BetaLaw,
        [Room, Beta, Measured], [new("T", Units.Celsius)],
        given => Thermistor.TemperatureByBeta(given.Resistance("R25"), given.Delta("B"),
            given.Resistance("R")) is { } found
            ? given.Answer(found)
            : Given.OutOfRange("R is too low for the beta law"));

    private static CalculationInput Point(string name) => CalculationInput.Positive(name, Units.Ohm).Within(1e-6, 1e12);

    private static CalculationInput Warm(string name) => CalculationInput.Temperature(name).Within(-150, 500);

    private static CalculationInput Coefficient(string name) =>
        CalculationInput.Number(name, Units.PerKelvin).Within(-1, 1);

    private static CalculationResult FindBeta(Given given) => given["T1"] == given["T2"]
        ? Given.Invalid("T1 and T2 must differ")
        : given.Answer(Thermistor.BetaKelvins(
            given.Resistance("R1"), given.Temperature("T1"), given.Resistance("R2"), given.Temperature("T2")));

    private static CalculationResult FindResistance(Given given)
    {
        var power = given["B"] * (1 / given.Temperature("T").Kelvins - 1 / Thermistor.RoomKelvins);
        return power > 100
            ? Given.OutOfRange("T is too low for the beta law")
            : given.Answer(Thermistor.ResistanceByBeta(
                given.Resistance("R25"), given.Delta("B"), given.Temperature("T")));
    }

    private static CalculationResult Interpolate(Given given)
    {
        if (Math.Abs(given["T"] - given["Tx"]) > 50)
            return Given.OutOfRange("T must lie within 50 K of Tx");
        var atPoint = Resistance.FromOhms(given["R25"] * given["ratio_at_Tx"]);
        return given.Answer(Thermistor.NearTablePoint(atPoint, given["alpha_at_Tx"], given.Temperature("Tx"),
            given.Temperature("T")));
    }

    private static CalculationResult Fit(Given given)
    {
        var names = new[] { "1", "2", "3" };
        var alike = names.Select(n => given["R" + n]).Distinct().Count() < 3 || names.Select(n => given["T" + n])
            .Distinct().Count() < 3;
        if (alike)
            return Given.Invalid("the three points must differ in R and in T");
        var points = names.Select(n => (given.Resistance("R" + n), given.Temperature("T" + n))).ToArray();
        return Thermistor.SteinhartHartFit(points[0], points[1], points[2]) is { } found
            ? given.Answer(found.A, found.B, found.C)
            : Given.OutOfRange("the three points do not fix a curve");
    }

    private static CalculationResult SteinhartHart(Given given) =>
        Thermistor.TemperatureBySteinhartHart(given["A"], given["B"], given["C"], given.Resistance("R")) is { } found
            ? given.Answer(found)
            : Given.OutOfRange("A, B, C and R give no temperature");
}
