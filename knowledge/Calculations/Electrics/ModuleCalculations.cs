using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Electrics;

/// <summary>Power modules, by name.</summary>
internal static class ModuleCalculations
{
    private static readonly Citation Alike = Citation.CommonPractice with { Place =
        "the three drops of each side alike, all in the band of a silicon diode" };

    public static ImmutableArray<Calculation> All =>
    [
        new("module-six", "Six diode readings of a power module",
            "spread = max - min of each side, pass when all lie from low to high and no spread is above spread_max",
            Alike,
            [Drops("upper"), Drops("lower"), Volts("low"), Volts("high"), Volts("spread_max")],
            [new("spread_upper", Units.Volt), new("spread_lower", Units.Volt), new("verdict", null)], Judge),
    ];

    private static CalculationInput Drops(string name) =>
        CalculationInput.Numbers(name, Units.Volt, Bounds.NotNegative);

    private static CalculationInput Volts(string name) => CalculationInput.NotNegative(name, Units.Volt).Within(0, 10);

    private static CalculationResult Judge(Given given)
    {
        var (upper, lower) = (given.Numbers("upper"), given.Numbers("lower"));
        if (upper.Length != 3 || lower.Length != 3)
            return Given.Invalid("upper and lower must be three readings each");
        if (given["low"] > given["high"])
            return Given.Invalid("low is above high");
        var (above, below) = (upper.Max() - upper.Min(), lower.Max() - lower.Min());
        var pass = upper.Concat(lower).All(drop => Side.IsInside(drop, given["low"], given["high"]))
            && Side.IsInside(Math.Max(above, below), 0, given["spread_max"]);
        return given.Answer(above, below, pass ? "pass" : "fail");
    }
}
