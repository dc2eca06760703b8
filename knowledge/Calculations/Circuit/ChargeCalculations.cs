using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Circuit;

/// <summary>Refrigerant charge, by name.</summary>
internal static class ChargeCalculations
{
    private static readonly Citation Sheet =
        new("The series' own service sheet", "charged length, rate and longest line");

    public static ImmutableArray<Calculation> All =>
    [
        new("line-charge", "Refrigerant to add for a long line",
            "extra = max(0, L - L_charged) rate, for L up to L_max",
            Sheet,
            [Metres("L"), Metres("L_charged"),
                CalculationInput.NotNegative("rate", Units.KilogramPerMeter).Within(0, 10), Metres("L_max")],
            [new("extra", Units.Kilogram)], given => given["L_charged"] > given["L_max"]
                ? Given.Invalid("L_charged is longer than L_max")
                : given["L"] > given["L_max"] ? Given.OutOfRange("L is longer than the unit allows, L_max")
                : given.Answer(Math.Max(0, given["L"] - given["L_charged"]) * given["rate"])),
    ];

    private static CalculationInput Metres(string name) =>
        CalculationInput.NotNegative(name, Units.Meter).Within(0, 1_000);
}
