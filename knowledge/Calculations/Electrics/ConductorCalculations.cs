using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Electrics;

/// <summary>Conductors, by name.</summary>
internal static class ConductorCalculations
{
    private static readonly Citation Drop = Citation.Textbook("Ohm's law, resistance only, unity power factor");

    public static ImmutableArray<Calculation> All =>
    [
        new("awg-r", "Resistance of an American wire size", "table, copper at 75 °C", Conductors.AmericanTable,
            [CalculationInput.NotNegative("size", Units.AmericanWireGauge),
                CalculationInput.Word("stranding", "stranded", "solid")],
            [new("R", Units.OhmPerKiloFoot)],
            given => Conductors.OhmsPerKiloFoot(given["size"], given.Word("stranding") == "solid") is { } ohms
                ? given.Answer(Units.OhmPerKiloFoot.ToSi(ohms))
                : Given.OutOfRange("the table has no such size")),
        new("iec-r", "Largest resistance of a metric wire size", "table, copper at 20 °C", Conductors.MetricTable,
            [CalculationInput.Positive("size", Units.SquareMilliMeter)], [new("R_max", Units.OhmPerKilometer)],
            given => Conductors.OhmsPerKilometer(Units.SquareMilliMeter.FromSi(given["size"])) is { } ohms
                ? given.Answer(Units.OhmPerKilometer.ToSi(ohms))
                : Given.OutOfRange("the table has no such size")),
        VoltageDrop("vd-1ph", "Voltage drop, single phase", "drop = 2 I R length", threePhase: false),
        VoltageDrop("vd-3ph", "Voltage drop, three phases", "drop = sqrt(3) I R length", threePhase: true),
        new("wire-temp", "Wire resistance at another temperature", "R2 = R1 (1 + alpha (T2 - T1))",
            Conductors.TemperatureLaw,
            [PerLength("R1"), CalculationInput.Temperature("T1"), CalculationInput.Temperature("T2"),
                CalculationInput.Number("alpha", Units.PerKelvin).Within(-0.1, 0.1)],
            [new("R2", Units.OhmPerKilometer, "R1")],
            given => 1 + given["alpha"] * (given["T2"] - given["T1"]) is >= 0 and var factor
                ? given.Answer(given["R1"] * factor)
                : Given.OutOfRange("T2 is too far from T1 for a straight law")),
    ];

    private static CalculationInput PerLength(string name) =>
        CalculationInput.NotNegative(name, Units.OhmPerKilometer).Within(0, 1e9);

    private static Calculation VoltageDrop(string name, string title, string formula, bool threePhase) => new(
        name, title, formula + "; V_load = V - drop", Drop,
        [CalculationInput.NotNegative("I", Units.Ampere).Within(0, 1e6),
            CalculationInput.NotNegative("length_one_way", Units.Meter).Within(0, 1e6),
            PerLength("R"), CalculationInput.Positive("V", Units.Volt).Within(1e-3, 1e6)],
        [new("drop", Units.Volt), new("drop_pct", Units.Percent), new("V_load", Units.Volt)],
        given =>
        {
            var drop = Conductors.Drop(Current.FromAmperes(given["I"]), given["R"],
                Length.FromMeters(given["length_one_way"]), threePhase);
            return drop > given["V"]
                ? Given.OutOfRange("the conductor cannot carry that current: the drop is larger than the supply")
                : given.Answer(drop, drop / given["V"], given["V"] - drop);
        });
}
