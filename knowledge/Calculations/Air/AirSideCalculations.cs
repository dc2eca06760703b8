using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations.Circuit;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Air;

/// <summary>Air at a coil, by name.</summary>
internal static class AirSideCalculations
{
    private static readonly CalculationInput Density = CalculationInput.Positive("rho", Units.PoundPerCubicFoot)
        .Within(0, 10);
    private static readonly CalculationInput Flow = CalculationInput.NotNegative("airflow", Units.CubicFootPerMinute)
        .Within(0, 1e7);

    public static ImmutableArray<Calculation> All =>
    [
        new("air-factor", "Sensible and total factors of air", "sensible = 60 rho cp, total = 60 rho", AirSide.Factors,
            [Density, CalculationInput.Positive("cp", Units.BtuPerPoundFahrenheit).Within(0, 10)],
            [new("sensible_factor", Units.BtuPerHourCfmFahrenheit), new("total_factor", Units.PoundPerHourPerCfm)],
            given => given.Answer(given["rho"] * given["cp"], given["rho"])),
        new("air-factor-latent", "Latent factors of air", "60 rho h_fg, to 1 lb/lb and to 1 gr/lb", AirSide.Factors,
            [Density, CalculationInput.Positive("h_fg", Units.BtuPerPound).Within(0, 10_000)],
            [new("latent_factor_lb", Units.BtuPerHourCfm), new("latent_factor_grain", Units.BtuPerHourCfmGrain)],
            given => given.Answer(given["rho"] * given["h_fg"], given["rho"] * given["h_fg"])),
        new("cool-sens-ip", "Sensible heat of standard air", "q = 1.08 airflow |T_out - T_in|", AirSide.Factors,
            [Flow, CalculationInput.Temperature("T_in"), CalculationInput.Temperature("T_out")],
            [new("q_sensible", Units.BtuPerHour)],
            given => given.Answer(Units.BtuPerHourCfmFahrenheit.ToSi(1.08) * given["airflow"] * Math.Abs(
                given["T_out"] - given["T_in"]))),
        new("cool-states-si", "Heat at a coil from the air before and after it",
            "m = airflow / v_in; q_total = m (h_in - h_out); q_sensible = m (1.006 + 1.86 W_out)(T_in - T_out); "
                + "condensate = m (W_in - W_out)", AirSide.States,
            [CalculationInput.NotNegative("airflow_at_inlet", Units.CubicMeterPerSecond).Within(0, 1e5), Air("T_in"),
                Relative("RH_in"), Air("T_out"), Relative("RH_out"),
                CalculationInput.Positive("p", Units.KiloPascalAbsolute).Within(1, 10_000)],
            [new("m_dry_air", Units.KilogramPerSecond), new("q_total", Units.KiloWatt),
                new("q_sensible", Units.KiloWatt), new("condensate", Units.KilogramPerHour)], Coil),
        new("cool-total-ip", "Total heat of standard air", "q = 4.5 airflow |h_in - h_out|", AirSide.Factors,
            [Flow, Enthalpy("h_in"), Enthalpy("h_out")], [new("q_total", Units.BtuPerHour)],
            given => given.Answer(Units.PoundPerHourPerCfm.ToSi(4.5) * given["airflow"] * Math.Abs(
                given["h_in"] - given["h_out"]))),
    ];

    private static CalculationInput Enthalpy(string name) =>
        CalculationInput.Number(name, Units.BtuPerPound).Within(-1000, 10_000);

    private static CalculationInput Air(string name) =>
        CalculationInput.Temperature(name).Within(MoistAir.ColdestCelsius, MoistAir.HottestCelsius);

    private static CalculationInput Relative(string name) =>
        CalculationInput.Number(name, Units.Percent, new Bounds(0, 100));

    private static CalculationResult Coil(Given given)
    {
        var pressure = given.Absolute("p");
        double Vapour(string end) => given["RH_" + end] * MoistAir.Saturation(given.Temperature("T_" + end)).Pascals;
        if (Vapour("in") >= pressure.Pascals || Vapour("out") >= pressure.Pascals)
            return Given.OutOfRange("the air is above the boiling point of water at p");
        var (dryAir, total, sensible, condensate) = AirSide.Coil(
            AirFlow.FromCubicMetersPerSecond(given["airflow_at_inlet"]), given.Temperature("T_in"),
            MoistAir.Ratio(Vapour("in"), pressure),
            given.Temperature("T_out"), MoistAir.Ratio(Vapour("out"), pressure), pressure);
        return given.Answer(dryAir, total, sensible, condensate);
    }
}
