using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations.Air;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Circuit;

/// <summary>Vacuum, by name.</summary>
internal static class VacuumCalculations
{
    public static ImmutableArray<Calculation> All =>
    [
        new("vac-decay", "Standing vacuum test",
            "rise = p_end - p_start; pass at or below 500 micron after 10 min or more", Vacuum.Test,
            [Microns("p_start"), Microns("p_end"), CalculationInput.Positive("minutes", Units.Minute)
                .Within(0, 100_000)],
            [new("rise", Units.MicronOfMercury), new("rise_rate", Units.MicronPerMinute), new("verdict", null)], Decay),
        new("vac-micron-pa", "Microns in pascals", "1 micron = 101,325/760,000 Pa", Vacuum.Micron,
            [Microns("p")], [new("p_Pa", Units.Pascal), new("p_mbar", Units.MilliBar)], given =>
                given.Answer(given["p"], given["p"])),
        new("vac-pa-micron", "Pascals in microns", "1 micron = 101,325/760,000 Pa", Vacuum.Micron,
            [Microns("p")], [new("p_micron", Units.MicronOfMercury)], given => given.Answer(given["p"])),
        new("vac-water", "Temperature at which water boils or ice sublimes in a vacuum",
            "Hyland-Wexler solved for T, over ice below 4588 micron", MoistAir.Handbook,
            [Microns("p")], [new("T_sat_water", Units.Celsius)],
            given => given["p"] <= 0 ? Given.Invalid("p must be above 0")
                : MoistAir.SaturationTemperature(given.Absolute("p")) is { } found ? given.Answer(found)
                : Given.OutOfRange("p is covered for -100 to 200 °C of saturation")),
    ];

    private static CalculationInput Microns(string name) =>
        CalculationInput.NotNegative(name, Units.MicronOfMercury).Within(0, 1e8);

    private static CalculationResult Decay(Given given)
    {
        var rise = given["p_end"] - given["p_start"];
        return given.Answer(rise, rise / given["minutes"],
            Vacuum.Decay(given.Absolute("p_end"), given["minutes"] / 60));
    }
}
