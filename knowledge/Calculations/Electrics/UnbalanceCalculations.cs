using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Electrics;

/// <summary>Unbalance, by name.</summary>
internal static class UnbalanceCalculations
{
    private const string Formula = "unbalance = max |x - mean| / mean";
    private static readonly Citation Derating = new("NEMA MG 1",
        "figure 14-1, read off by public pages, which differ by up to 0.02");
    private static readonly Citation Rule = new("Rule of thumb on voltage unbalance", "found on public pages");
    private static readonly CalculationInput Percent = CalculationInput.NotNegative("unbalance", Units.Percent);

    public static ImmutableArray<Calculation> All =>
    [
        Nema,
        new("unb-approx82", "Voltage unbalance, short form", "u2 = 0.82 sqrt(sum (U - mean)^2) / mean",
            Unbalance.ShortForm,
            Lines, [new("u2_approx", Units.Percent)],
            given => Sum(given, "U12", "U23", "U31") > 1e-9
                ? given.Answer(Unbalance.Approximate(given["U12"], given["U23"], given["U31"]))
                : Given.Invalid("the mean is zero: the supply is dead")),
        new("unb-cur", "Current unbalance", Formula, Unbalance.MotorStandard,
            [Amperes("I1"), Amperes("I2"), Amperes("I3")],
            [new("mean", Units.Ampere, "I1"), new("max_deviation", Units.Ampere, "I1"),
                new("unbalance", Units.Percent)],
            given => OfThree(given, "I1", "I2", "I3")),
        new("unb-current-rule", "Current unbalance to expect from voltage unbalance",
            "current unbalance = 6 to 10 times the voltage unbalance", Rule,
            [CalculationInput.NotNegative("voltage_unbalance", Units.Percent).Within(0, 100)],
            [new("current_unbalance_low", Units.Percent), new("current_unbalance_high", Units.Percent)],
            given => given.Answer(6 * given["voltage_unbalance"], 10 * given["voltage_unbalance"])),
        new("unb-derate", "Derating of a motor by voltage unbalance",
            "table against unbalance, straight between its lines", Derating,
            [Percent.Within(0, 5)], [new("derating", Units.One)], given =>
                given.Answer(Unbalance.Derating(Math.Min(5, given["unbalance"] * 100)))),
        new("unb-heat", "Extra winding temperature rise by voltage unbalance", "extra rise in % = 2 (unbalance in %)^2",
            Rule,
            [Percent.Within(0, 100)], [new("extra_temperature_rise", Units.Percent)],
            given => given.Answer(2 * given["unbalance"] * given["unbalance"] * 100)),
        Iec,
    ];

    public static Calculation Nema { get; } = new(
        "unb-nema", "Voltage unbalance", Formula, Unbalance.MotorStandard,
        [Volts("V1"), Volts("V2"), Volts("V3")],
        [new("mean", Units.Volt, "V1"), new("max_deviation", Units.Volt, "V1"), new("unbalance", Units.Percent)],
        given => OfThree(given, "V1", "V2", "V3"));

    public static Calculation Iec { get; } = new(
        "unb-iec", "Ratio of negative to positive sequence",
        "u2 = sqrt((1 - sqrt(3 - 6 b)) / (1 + sqrt(3 - 6 b))), b = sum U^4 / (sum U^2)^2", Unbalance.PowerQuality,
        Lines, [new("u2", Units.Percent)], NegativeSequence);

    private static ImmutableArray<CalculationInput> Lines => [Volts("U12"), Volts("U23"), Volts("U31")];

    private static CalculationInput Volts(string name) => CalculationInput.NotNegative(name, Units.Volt).Within(0, 1e6);

    private static CalculationInput Amperes(string name) =>
        CalculationInput.NotNegative(name, Units.Ampere).Within(0, 1e6);

    private static double Sum(Given given, params string[] names) => names.Sum(name => given[name]);

    private static CalculationResult OfThree(Given given, string one, string two, string three)
    {
        if (!(Sum(given, one, two, three) > 1e-9))
            return Given.Invalid("the mean is zero: nothing is connected or the supply is dead");
        var (mean, deviation, share) = Unbalance.OfThree(given[one], given[two], given[three]);
        return given.Answer(mean, deviation, share);
    }

    private static CalculationResult NegativeSequence(Given given) =>
        !(Sum(given, "U12", "U23", "U31") > 1e-9) ? Given.Invalid("the mean is zero: the supply is dead")
        : Unbalance.NegativeSequence(given["U12"], given["U23"], given["U31"]) is { } share ? given.Answer(share)
        : Given.Invalid("no three-phase supply has these voltages: one is larger than the other two together");
}
