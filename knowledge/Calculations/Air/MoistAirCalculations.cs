using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations.Circuit;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Air;

/// <summary>Moist air, by name.</summary>
internal static class MoistAirCalculations
{
    private static readonly CalculationInput Dry = CalculationInput.Temperature("T_db")
        .Within(MoistAir.ColdestCelsius, MoistAir.HottestCelsius);
    private static readonly CalculationInput Wet = CalculationInput.Temperature("T_wb")
        .Within(MoistAir.ColdestCelsius, MoistAir.HottestCelsius);
    private static readonly CalculationInput Relative =
        CalculationInput.Number("RH", Units.Percent, new Bounds(0, 100));
    private static readonly CalculationInput Pressure = CalculationInput.Positive("p", Units.KiloPascalAbsolute)
        .Within(1, 10_000);
    private static readonly CalculationOutput Enthalpy = new("h", Units.KiloJoulePerKilogram);
    private static readonly CalculationOutput Volume = new("v", Units.CubicMeterPerKilogram);
    private static readonly CalculationOutput Density = new("rho", Units.KilogramPerCubicMeter);
    private static readonly CalculationOutput Ratio = new("W", Units.GramPerKilogram);
    private static readonly CalculationOutput Dew = new("T_dp", Units.Celsius, "T_db");

    public static ImmutableArray<Calculation> All =>
    [
        WetBulb("psy-handbook-example"),
        new("psy-moist-air", "Enthalpy, volume and density of moist air",
            "h = 1.006 T + W (2501 + 1.86 T); v = 0.287042 T (1 + 1.607858 W) / p; rho = (1 + W) / v",
            MoistAir.Handbook,
            [Dry, CalculationInput.NotNegative("W", Units.GramPerKilogram).Within(0, 1000), Pressure],
            [Enthalpy, Volume, Density],
            given => given.Answer(
                MoistAir.Enthalpy(given.Temperature("T_db"), given["W"]),
                MoistAir.Volume(given.Temperature("T_db"), given["W"], given.Absolute("p")),
                MoistAir.Density(given.Temperature("T_db"), given["W"], given.Absolute("p")))),
        new("psy-psat", "Saturation pressure of water", "Hyland-Wexler, over ice below 0.01 °C", MoistAir.Handbook,
            [CalculationInput.Temperature("T").Within(MoistAir.ColdestCelsius, MoistAir.HottestCelsius)],
            [new("p_ws", Units.KiloPascal)],
            given => given.Answer(MoistAir.Saturation(given.Temperature("T")))),
        FromRelative,
        new("psy-w-from-pv", "Humidity ratio from vapour pressure", "W = 0.621945 p_v / (p - p_v)", MoistAir.Handbook,
            [CalculationInput.NotNegative("p_v", Units.KiloPascalAbsolute).Within(0, 10_000), Pressure], [Ratio],
            given => given["p_v"] < given["p"]
                ? given.Answer(MoistAir.Ratio(given["p_v"], given.Absolute("p")))
                : Given.Invalid("p_v must be below p")),
        WetBulb("psy-wb"),
    ];

    public static Calculation FromRelative { get; } = new(
        "psy-rh", "State of moist air from relative humidity",
        "p_v = RH p_ws(T_db); W = 0.621945 p_v / (p - p_v); T_wb by ASHRAE's balance", MoistAir.Handbook,
        [Dry, Relative, Pressure], [Ratio, new("T_wb", Units.Celsius, "T_db"), Dew, Enthalpy, Density], Humid);

    private static Calculation WetBulb(string name) => new(
        name, "State of moist air from its wet bulb",
        "W = ((2501 - 2.326 T_wb) W_s - 1.006 (T_db - T_wb)) / (2501 + 1.86 T_db - 4.186 T_wb), over ice below 0 °C",
        MoistAir.Handbook,
        [Dry, Wet, Pressure], [Ratio, Dew, new("RH", Units.Percent), Enthalpy, Volume], FromWetBulb);

    private static CalculationResult Humid(Given given)
    {
        var (dry, pressure) = (given.Temperature("T_db"), given.Absolute("p"));
        var vapour = given["RH"] * MoistAir.Saturation(dry).Pascals;
        if (vapour >= pressure.Pascals)
            return Given.OutOfRange("T_db is above the boiling point of water at p");
        if (MoistAir.SaturationTemperature(AbsolutePressure.FromPascals(vapour)) is not { } dew)
            return Given.OutOfRange("RH is too low for a dew point");
        var ratio = MoistAir.Ratio(vapour, pressure);
        return given.Answer(
            ratio, MoistAir.WetBulb(dry, ratio, pressure), dew, MoistAir.Enthalpy(dry, ratio),
                MoistAir.Density(dry, ratio, pressure));
    }

    private static CalculationResult FromWetBulb(Given given)
    {
        var (dry, wet, pressure) = (given.Temperature("T_db"), given.Temperature("T_wb"), given.Absolute("p"));
        if (wet > dry)
            return Given.Invalid("T_wb must not be above T_db");
        var saturation = MoistAir.Saturation(dry).Pascals;
        if (saturation >= pressure.Pascals)
            return Given.OutOfRange("T_db is above the boiling point of water at p");
        var ratio = MoistAir.RatioFromWetBulb(dry, wet, pressure);
        if (ratio < 0)
            return Given.Invalid("T_wb is below that of dry air");
        var vapour = MoistAir.VapourPascals(ratio, pressure);
        return MoistAir.SaturationTemperature(AbsolutePressure.FromPascals(vapour)) is { } dew
            ? given.Answer(ratio, dew, vapour / saturation, MoistAir.Enthalpy(dry, ratio),
                MoistAir.Volume(dry, ratio, pressure))
            : Given.OutOfRange("T_wb is too low for a dew point");
    }
}
