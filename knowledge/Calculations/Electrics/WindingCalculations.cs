using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Electrics;

/// <summary>Windings, by name.</summary>
internal static class WindingCalculations
{
    private static readonly Citation Balance = Citation.CommonPractice with { Place =
        "largest deviation from the mean, as for voltages" };
    private static readonly CalculationInput Zero = CalculationInput.Positive("k", Units.Kelvin).Within(100, 1000);

    public static ImmutableArray<Calculation> All =>
    [
        new("cu-r", "Winding resistance at another temperature", "R2 = R1 (k + T2) / (k + T1)", Winding.TemperatureLaw,
            [Ohms("R1"), Warm("T1"), Warm("T2"), Zero], [new("R2", Units.Ohm, "R1")],
            given => Colder(given, "T1", "T2") ?? given.Answer(
                Winding.AtTemperature(given.Resistance("R1"), given.Temperature("T1"), given.Temperature("T2"),
                    given["k"]))),
        new("cu-rise", "Temperature rise of a winding", "rise = (R2 - R1) / R1 (k + T1) + T1 - Ta",
            Winding.TemperatureLaw,
            [Ohms("R1"), Warm("T1"), Ohms("R2"), Warm("T_ambient_end"), Zero],
            [new("rise", Units.Kelvin, "T_ambient_end")],
            given => Colder(given, "T1") ?? given.Answer(Hot(given) - given["T_ambient_end"])),
        new("cu-t", "Temperature of a winding from its resistance", "T2 = R2 / R1 (k + T1) - k", Winding.TemperatureLaw,
            [Ohms("R1"), Warm("T1"), Ohms("R2"), Zero], [new("T2", Units.Celsius, "T1")],
            given => Colder(given, "T1") ?? given.Answer(Hot(given))),
        new("wind-balance", "Balance of three windings", "imbalance = max |R - mean| / mean", Balance,
            [Reading("R12"), Reading("R23"), Reading("R31")],
            [new("mean", Units.Ohm, "R12"), new("imbalance", Units.Percent)], OfThree),
        new("wind-delta-terminals", "Terminal readings of a delta",
            "R12 = Ra (Rb + Rc) / (Ra + Rb + Rc), and so on round", Winding.Circuit,
            [Reading("Ra_12"), Reading("Rb_23"), Reading("Rc_31")],
            [new("R12", Units.Ohm, "Ra_12"), new("R23", Units.Ohm, "Ra_12"), new("R31", Units.Ohm, "Ra_12")], Delta),
        new("wind-ll", "Terminal reading of equal phases", "star: R = 2 R_phase; delta: R = 2/3 R_phase",
            Winding.Circuit,
            [CalculationInput.Word("connection", "star", "delta"), Ohms("R_phase")],
            [new("R_line_line", Units.Ohm, "R_phase")],
            given => given.Answer(Winding.BetweenTerminals(
                given.Resistance("R_phase"), given.Word("connection") == "star"))),
        new("wind-star-solve", "Phases of a star from terminal readings", "R1 = (R12 + R31 - R23) / 2, and so on round",
            Winding.Circuit,
            [Reading("R12"), Reading("R23"), Reading("R31")],
            [new("R1", Units.Ohm, "R12"), new("R2", Units.Ohm, "R12"), new("R3", Units.Ohm, "R12")], Star),
    ];

    private static CalculationInput Ohms(string name) => CalculationInput.Positive(name, Units.Ohm).Within(1e-9, 1e12);

    private static CalculationInput Reading(string name) =>
        CalculationInput.NotNegative(name, Units.Ohm).Within(0, 1e12);

    private static CalculationInput Warm(string name) => CalculationInput.Temperature(name).Within(-100, 500);

    private static CalculationResult? Colder(Given given, params string[] names) =>
        names.FirstOrDefault(name => given[name] + given["k"] <= 0) is { } name
            ? Given.OutOfRange($"{name} must be above -k")
            : null;

    private static double Hot(Given given) =>
        Winding.HotCelsius(given.Resistance("R1"), given.Temperature("T1"), given.Resistance("R2"), given["k"]);

    private static CalculationResult OfThree(Given given)
    {
        if (!(given["R12"] + given["R23"] + given["R31"] > 1e-9))
            return Given.Invalid("the mean is zero: the leads are shorted");
        var (mean, _, share) = Unbalance.OfThree(given["R12"], given["R23"], given["R31"]);
        return given.Answer(mean, share);
    }

    private static CalculationResult Delta(Given given)
    {
        if (!(given["Ra_12"] + given["Rb_23"] + given["Rc_31"] > 1e-9))
            return Given.Invalid("all phases are zero");
        var (r12, r23, r31) = Winding.DeltaTerminals(given.Resistance("Ra_12"), given.Resistance("Rb_23"),
            given.Resistance("Rc_31"));
        return given.Answer(r12, r23, r31);
    }

    private static CalculationResult Star(Given given)
    {
        var (one, two, three) = Winding.StarPhases(given["R12"], given["R23"], given["R31"]);
        return one < 0 || two < 0 || three < 0
            ? Given.Invalid("no star reads like that: one reading is larger than the other two together")
            : given.Answer(one, two, three);
    }
}
