using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Electrics;

/// <summary>Supply voltage, by name.</summary>
internal static class SupplyCalculations
{
    private static readonly CalculationInput Nominal = CalculationInput.Positive("nominal", Units.Volt)
        .Within(1, 100_000);
    private static readonly CalculationInput Measured = CalculationInput.NotNegative("measured", Units.Volt)
        .Within(0, 100_000);
    private static readonly CalculationInput Range = CalculationInput.Word("range", "A", "B");
    private static readonly CalculationInput Point = CalculationInput.Word("point", "service", "utilization");
    private static readonly ImmutableArray<CalculationOutput> Limits = [new("min", Units.Volt, "nominal"),
        new("max", Units.Volt, "nominal")];

    public static ImmutableArray<Calculation> All =>
    [
        new("leg-open-neutral", "Legs of a split supply with an open neutral", "V1 = V R1 / (R1 + R2), V2 = V - V1",
            SupplyLimits.SplitSupply,
            [CalculationInput.NotNegative("V_line", Units.Volt).Within(0, 100_000), Load("R1"), Load("R2")],
            [new("V_leg1", Units.Volt, "V_line"), new("V_leg2", Units.Volt, "V_line")], OpenNeutral),
        new("sup-ansi", "Supply limits by ANSI C84.1", "table by nominal voltage, range and point",
            SupplyLimits.American,
            [Nominal.Within(100, 1000), Range, Point], Limits, given => Answer(given, Ansi(given))),
        new("sup-classify", "Supply voltage against ANSI C84.1", "below, inside or above the limits, ends included",
            SupplyLimits.American,
            [Measured, Nominal.Within(100, 1000), Range, Point], [new("verdict", null)], Classify),
        new("sup-dev", "Deviation of a supply voltage", "deviation = (measured - nominal) / nominal",
            Citation.Textbook("definition"),
            [Measured, Nominal], [new("deviation", Units.Percent)],
            given => given.Answer((given["measured"] - given["nominal"]) / given["nominal"])),
        new("sup-iec", "Supply limits by IEC 60038", "min = 0.9 nominal, max = 1.1 nominal", SupplyLimits.International,
            [Nominal], Limits, given => Answer(given, SupplyLimits.Iec(Voltage.FromVolts(given["nominal"])))),
    ];

    private static CalculationInput Load(string name) => CalculationInput.NotNegative(name, Units.Ohm).Within(0, 1e9);

    private static CalculationResult Answer(Given given, (double Least, double Most) limits) =>
        given.Answer(limits.Least, limits.Most);

    private static (double Least, double Most) Ansi(Given given) => SupplyLimits.Ansi(
        Voltage.FromVolts(given["nominal"]), given.Word("range") == "B", given.Word("point") == "utilization");

    private static CalculationResult Classify(Given given)
    {
        var (least, most) = Ansi(given);
        return given.Answer(Side.Of(given["measured"], least, most));
    }

    private static CalculationResult OpenNeutral(Given given)
    {
        if (!(given["R1"] + given["R2"] > 1e-9))
            return Given.Invalid("R1 and R2 are both zero: a short");
        var (one, two) = SupplyLimits.OpenNeutral(Voltage.FromVolts(given["V_line"]), given.Resistance("R1"),
            given.Resistance("R2"));
        return given.Answer(one.Volts, two.Volts);
    }
}
