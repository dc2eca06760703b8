using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Doubt;

/// <summary>Uncertainty and decisions, by name. Numbers of any unit, so long as all have the same.</summary>
internal static class UncertaintyCalculations
{
    private static readonly CalculationInput Value = CalculationInput.Any("y");
    private static readonly CalculationInput Standard = CalculationInput.Any("u", Bounds.Positive);
    private static readonly CalculationInput Lower = CalculationInput.Any("T_L");
    private static readonly CalculationInput Upper = CalculationInput.Any("T_U");
    private static readonly CalculationOutput Probability = new("p_c", Units.One);

    public static ImmutableArray<Calculation> All =>
    [
        new("combine-u", "Combined uncertainty", "u_c = sqrt(sum (c u)^2), U_k2 = 2 u_c", Uncertainty.Guide,
            [CalculationInput.Any("u1", Bounds.NotNegative), Slope("c1"),
                CalculationInput.Any("u2", Bounds.NotNegative), Slope("c2"),
                CalculationInput.Any("u3", Bounds.NotNegative).Optional(), Slope("c3").Optional()],
            [new("u_c", null, "u1"), new("U_k2", null, "u1")], Combined),
        new("dmm-accuracy", "Uncertainty of a meter reading",
            "limit = |reading| percent + counts resolution, u = limit / sqrt(3)", Uncertainty.Guide,
            [CalculationInput.Any("reading"), CalculationInput.Any("resolution", Bounds.NotNegative),
                CalculationInput.NotNegative("percent", Units.Percent).Within(0, 1000),
                CalculationInput.NotNegative("counts", Units.Each).Within(0, 1e9)],
            [new("limit_of_error", null, "reading"), new("standard_uncertainty", null, "reading")], Meter),
        new("guard-band", "Guard band for a probability of conformance", "g = z(p) u", Conformance.Guide,
            [CalculationInput.Positive("p_c_required", Units.One), Standard], [new("g", null, "u")], Guard),
        new("iso14253", "Decision with guard band U", "pass inside [T_L + U, T_U - U], fail outside [T_L - U, T_U + U]",
            Conformance.OldRule,
            [Value, CalculationInput.Any("U", Bounds.NotNegative), Lower, Upper], [new("verdict", null)],
            given => Turned(given) ?? given.Answer(Conformance.Decide(
                Raw(given, "y"), Raw(given, "U"), Raw(given, "T_L"), Raw(given, "T_U")))),
        new("iso14253-2017", "Decision with guard band 1.65 u",
            "guard = 1.65 u; pass inside [T_L + guard, T_U - guard], fail outside by more than it", Conformance.NewRule,
            [Value, CalculationInput.Any("u", Bounds.NotNegative), Lower, Upper],
            [new("guard", null, "u"), new("verdict", null)], NewRule),
        new("jcgm-pc1", "Probability of conformance to one limit",
            "p_c = Phi((limit - y) / u) for an upper limit, Phi((y - limit) / u) for a lower one", Conformance.Guide,
            [Value, Standard, CalculationInput.Any("limit"), CalculationInput.Word("side", "upper", "lower")],
            [Probability],
            given => given.Answer(Normal.Probability(
                (given.Word("side") == "upper" ? 1 : -1) * (Raw(given, "limit") - Raw(given, "y")) / Raw(given, "u")))),
        new("jcgm-pc2", "Probability of conformance to two limits", "p_c = Phi((T_U - y) / u) - Phi((T_L - y) / u)",
            Conformance.Guide,
            [Value, Standard, Lower, Upper], [Probability],
            given => Turned(given) ?? given.Answer(Normal.Between(
                (Raw(given, "T_L") - Raw(given, "y")) / Raw(given, "u"),
                (Raw(given, "T_U") - Raw(given, "y")) / Raw(given, "u")))),
        new("uniform-u", "Standard uncertainty of a limit of error", "u = half_width / sqrt(3)", Uncertainty.Guide,
            [CalculationInput.Any("half_width", Bounds.NotNegative)], [new("u", null, "half_width")],
            given => given.Answer(Back(given, "half_width", Uncertainty.OfLimit(Raw(given, "half_width"))))),
    ];

    private static CalculationInput Slope(string name) => CalculationInput.Number(name, Units.Each).Within(-1e9, 1e9);

    // As typed: a standard uncertainty in °C has no zero point to shift.
    private static double Raw(Given given, string name) => given.Number(name).Value;

    private static double Back(Given given, string name, double asTyped) => given.Number(name).Unit.ToSi(asTyped);

    private static CalculationResult? Turned(Given given) =>
        Raw(given, "T_L") <= Raw(given, "T_U") ? null : Given.Invalid("T_L must not be above T_U");

    private static CalculationResult Combined(Given given)
    {
        if (given.Has("u3") != given.Has("c3"))
            return Given.Invalid("u3 and c3 go together");
        var third = given.Has("u3") ? (given["c3"], Raw(given, "u3")) : (0, 0);
        var combined = Uncertainty.Combined((given["c1"], Raw(given, "u1")), (given["c2"], Raw(given, "u2")), third);
        return given.Answer(Back(given, "u1", combined), Back(given, "u1", 2 * combined));
    }

    private static CalculationResult Meter(Given given)
    {
        var limit = Uncertainty.MeterLimit(Raw(given, "reading"), given["percent"] * 100, given["counts"],
            Raw(given, "resolution"));
        return given.Answer(Back(given, "reading", limit), Back(given, "reading", Uncertainty.OfLimit(limit)));
    }

    private static CalculationResult Guard(Given given) => given["p_c_required"] < 1
        ? given.Answer(Back(given, "u", Normal.Quantile(given["p_c_required"]) * Raw(given, "u")))
        : Given.Invalid("p_c_required must be below 1");

    private static CalculationResult NewRule(Given given)
    {
        var guard = Conformance.NewGuard * Raw(given, "u");
        return Turned(given) ?? given.Answer(
            Back(given, "u", guard), Conformance.Decide(Raw(given, "y"), guard, Raw(given, "T_L"), Raw(given, "T_U")));
    }
}
