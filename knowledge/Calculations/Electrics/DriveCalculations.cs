using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Electrics;

/// <summary>Direct-voltage bus and motor speeds, by name.</summary>
internal static class DriveCalculations
{
    private static readonly Citation Speed = Citation.Textbook("pulses, poles and revolutions");

    public static ImmutableArray<Calculation> All =>
    [
        new("dc-bus", "Unloaded bus behind a rectifier", "V_dc = sqrt(2) V_ac", Rectifier.Circuit,
            [Volts("V_ac")], [new("V_dc_peak", Units.Volt, "V_ac")],
            given => given.Answer(Rectifier.Peak(Voltage.FromVolts(given["V_ac"])).Volts)),
        new("dc-bus-3ph", "Bus behind a three-phase bridge", "mean = 3 sqrt(2) / pi V_ll, peak = sqrt(2) V_ll",
            Rectifier.Circuit,
            [Volts("V_ll")], [new("V_dc_mean", Units.Volt, "V_ll"), new("V_dc_peak", Units.Volt, "V_ll")],
            given => given.Answer(
                Rectifier.ThreePhaseMean(Voltage.FromVolts(given["V_ll"])).Volts,
                Rectifier.Peak(Voltage.FromVolts(given["V_ll"])).Volts)),
        new("dc-bus-boost", "Bus against the peak of the supply: is a boost stage at work",
            "V_dc_peak = sqrt(2) V_ac, above = V_dc / V_dc_peak - 1, boosted when above tolerance", Rectifier.Circuit,
            [CalculationInput.Positive("V_ac", Units.Volt).Within(1, 1e6), Volts("V_dc"),
                CalculationInput.NotNegative("tolerance", Units.Percent).Within(0, 100)],
            [new("V_dc_peak", Units.Volt, "V_ac"), new("above", Units.Percent), new("boosted", null)], Boost),
        new("fan-tacho", "Fan speed from its pulses", "speed = 60 f / pulses_per_rev", Speed,
            [CalculationInput.NotNegative("f", Units.Hertz).Within(0, 1e7),
                CalculationInput.Positive("pulses_per_rev", Units.Each).Within(1e-3, 1e6)],
            [new("speed", Units.RevolutionsPerMinute)], given =>
                given.Answer(60 * given["f"] / given["pulses_per_rev"])),
        new("slip", "Slip of a motor", "slip = (n_sync - n) / n_sync", Speed,
            [CalculationInput.Positive("n_sync", Units.RevolutionsPerMinute).Within(1e-3, 1e6),
                CalculationInput.NotNegative("n", Units.RevolutionsPerMinute).Within(0, 1e6)],
            [new("slip", Units.Percent)], given => given.Answer((given["n_sync"] - given["n"]) / given["n_sync"])),
        new("sync-speed", "Synchronous speed", "speed = 120 f / poles", Speed,
            [CalculationInput.NotNegative("f", Units.Hertz).Within(0, 1e6),
                CalculationInput.Positive("poles", Units.Each).Within(1, 1000)],
            [new("speed", Units.RevolutionsPerMinute)],
            given => given["poles"] % 2 == 0 ? given.Answer(120 * given["f"] / given["poles"])
                : Given.Invalid("poles must be an even number")),
    ];

    private static CalculationResult Boost(Given given)
    {
        var peak = Rectifier.Peak(Voltage.FromVolts(given["V_ac"])).Volts;
        var above = given["V_dc"] / peak - 1;
        return given.Answer(peak, above, above > given["tolerance"]);
    }

    private static CalculationInput Volts(string name) => CalculationInput.NotNegative(name, Units.Volt).Within(0, 1e6);
}
