using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Electrics;

/// <summary>Insulation resistance, by name.</summary>
internal static class InsulationCalculations
{
    private static readonly CalculationInput Measured = Reading("IR_measured");
    private static readonly CalculationInput Winding = CalculationInput.Temperature("T_winding");
    private static readonly CalculationInput Rated = CalculationInput.Positive("V_rated", Units.Volt)
        .Within(1e-3, 100_000);
    private static readonly Citation Absorption = Citation.CommonPractice with { Place =
        "R(60 s) / R(30 s); 1.25 to 1.4 or more is called good" };

    public static ImmutableArray<Calculation> All =>
    [
        new("ir-corr-2013", "Insulation resistance at 40 °C, thermosetting",
            "IR_40 = K IR; K = exp(-4230 (1/(T+273) - 1/313)) from 40 to 85 °C, exp(-1245 (...)) from 10 to 40 °C",
            Insulation.Thermosetting,
            [Measured, Winding.Within(10, 85)], [new("K_T", Units.One), new("IR_40", Units.MegaOhm, "IR_measured")],
            given => Corrected(given, Insulation.ThermosettingFactor(given.Temperature("T_winding")))),
        new("ir-corr-halving", "Insulation resistance at 40 °C by halving", "IR_40 = IR 0.5^((40 °C - T) / 10 K)",
            Insulation.Halving,
            [Measured, Winding.Within(-50, 200)], [new("IR_40", Units.MegaOhm, "IR_measured")],
            given => given.Answer(given["IR_measured"] * Insulation.HalvingFactor(given.Temperature("T_winding")))),
        new("ir-dar", "Dielectric absorption ratio", "DAR = IR_60s / IR_30s", Absorption,
            [Reading("IR_30s"), Reading("IR_60s")], [new("DAR", Units.One)], given =>
                given.Answer(given["IR_60s"] / given["IR_30s"])),
        new("ir-min-class", "Least insulation resistance by kind of winding", "table: 5 Mohm, 100 Mohm, or kV + 1",
            Insulation.Standard,
            [CalculationInput.Word("winding"), Rated.Optional()], [new("IR_min", Units.MegaOhm)], ByKind),
        new("ir-min-kv1", "Least insulation resistance by rated voltage", "IR_min in Mohm = V_rated in kV + 1",
            Insulation.Standard,
            [Rated], [new("IR_min", Units.MegaOhm)],
            given => given.Answer(Insulation.MinimumByVoltage(Voltage.FromVolts(given["V_rated"])))),
        new("ir-pi", "Polarization index",
            "PI = IR_10min / IR_1min, for IR_1min up to 5000 Mohm", Insulation.Standard,
            // Above 5000 Mohm the index means nothing: the current is too small to measure well.
            [Reading("IR_1min").Within(1e-9, 5_000), Reading("IR_10min")], [new("PI", Units.One)], given =>
                given.Answer(given["IR_10min"] / given["IR_1min"])),
    ];

    private static CalculationInput Reading(string name) =>
        CalculationInput.Positive(name, Units.MegaOhm).Within(1e-9, 1e9);

    private static CalculationResult Corrected(Given given, double factor) =>
        given.Answer(factor, given["IR_measured"] * factor);

    private static CalculationResult ByKind(Given given)
    {
        if (Insulation.BeforeRule(given.Word("winding")))
            return given.Has("V_rated")
                ? given.Answer(Insulation.MinimumByVoltage(Voltage.FromVolts(given["V_rated"])))
                : Given.Invalid("V_rated is missing: it decides for this winding");
        return Insulation.MinimumMegohms(given.Word("winding")) is { } megohms
            ? given.Answer(megohms * 1e6)
            : Given.OutOfRange("winding is covered for random-wound, form-wound, armature, field");
    }
}
