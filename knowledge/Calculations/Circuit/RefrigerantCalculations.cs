using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations.Air;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Circuit;

/// <summary>Refrigerant saturation, superheat and altitude, by name.</summary>
internal static class RefrigerantCalculations
{
    internal static readonly Citation Equations = new("Published saturation equations of each refrigerant",
        "named in the derivation");
    private static readonly CalculationInput Which = CalculationInput.Word("refrigerant");
    private static readonly CalculationInput Curve = CalculationInput.Word("curve", "bubble", "dew");
    private static readonly CalculationInput Absolute = CalculationInput.Positive("p", Units.KiloPascalAbsolute)
        .Within(0, 1e6);
    private static readonly CalculationInput Gauge = CalculationInput.Gauge("p_gauge");
    private static readonly CalculationInput Atmosphere = CalculationInput.Atmosphere("p_atm");
    private static readonly CalculationInput Altitude = CalculationInput.Number("altitude", Units.Meter)
        .Within(-5_000, 11_000);
    private static readonly CalculationInput Line = CalculationInput.Temperature("T_line");
    private static readonly CalculationOutput Saturated = new("T_sat", Units.Celsius, "T_line");

    public static ImmutableArray<Calculation> All =>
    [
        new("atm-alt", "Air pressure at an altitude", "p_atm = 101.325 kPa (1 - 2.25577e-5 altitude)^5.25588",
            StandardAtmosphere.Standard,
            [Altitude], [new("p_atm", Units.KiloPascal)], given =>
                given.Answer(StandardAtmosphere.PressureAt(given["altitude"]))),
        new("gauge-alt-error", "What ignoring the altitude does to a saturation temperature",
            "T_sat at p_gauge + p_atm(altitude), and at p_gauge + 101.325 kPa", Equations,
            [Which, Gauge, Altitude, Curve],
            [new("T_sat_true", Units.Celsius), new("T_sat_if_sea_level_assumed", Units.Celsius)], AltitudeError),
        new("press-conv", "Absolute pressure from gauge pressure", "p_abs = p_gauge + p_atm",
            Citation.Textbook("definition of gauge pressure"),
            [Gauge, Atmosphere], [new("p_abs", Units.KiloPascalAbsolute)],
            given => given["p_gauge"] + given["p_atm"] is >= 0 and var sum ? given.Answer(sum)
                : Given.Invalid("p_gauge is below a perfect vacuum")),
        Pressures("r22", blend: false), Pressures("r290", blend: false), Pressures("r32", blend: false),
        Pressures("r410a", blend: true), Pressures("r454b", blend: true),
        AtPressure,
        new("subcooling", "Subcooling", "subcooling = T_bubble(p_gauge + p_atm) - T_line", Equations,
            [Which, Gauge, Atmosphere, Line], [Saturated, new("subcooling", Units.Kelvin, "T_line")], given =>
                Difference(given, "bubble", -1)),
        new("superheat", "Superheat", "superheat = T_line - T_dew(p_gauge + p_atm)", Equations,
            [Which, Gauge, Atmosphere, Line], [Saturated, new("superheat", Units.Kelvin, "T_line")], given =>
                Difference(given, "dew", 1)),
    ];

    public static Calculation AtPressure { get; } = new(
        "ref-tsat", "Saturation temperature", "saturation curve solved for T", Equations,
        [Which, Absolute, Curve.Optional()], [new("T_sat", Units.Celsius)], SaturationTemperature);

    private static Calculation Pressures(string name, bool blend)
    {
        ImmutableArray<CalculationOutput> bubble = [new("p_bubble", Units.KiloPascalAbsolute),
            new("p_bubble_psig", Units.PsiGauge)];
        ImmutableArray<CalculationOutput> dew = [new("p_dew", Units.KiloPascalAbsolute),
            new("p_dew_psig", Units.PsiGauge)];
        var held = Refrigerant.Find(name)!;
        return new Calculation(
            "ref-sat-" + name, $"Saturation pressure of {held.Name}", held.Bubble!.Formula, held.Source,
            [Which, CalculationInput.Temperature("T"), Atmosphere], blend ? bubble.AddRange(dew) : bubble, given =>
                SaturationPressure(given, blend));
    }

    /// <summary>The refrigerant asked for, with its curves; or why there is none.</summary>
    private static (Refrigerant? Held, CalculationResult? Refusal) Find(Given given)
    {
        var word = given.Word("refrigerant");
        if (Refrigerant.Find(word) is { Dew: not null } held)
            return (held, null);
        var message =
            $"refrigerant is covered for {string.Join(", ", Refrigerant.All.Where(r => r.Dew is not null).Select(r => r.Name))}";
        return (null, Refrigerant.LooksLikeOne(word) ? Given.OutOfRange(message) : Given.Invalid(message));
    }

    private static CalculationResult SaturationPressure(Given given, bool blend)
    {
        if (Find(given) is not (Refrigerant held, _))
            return Find(given).Refusal!;
        if (!held.Bubble!.TryPressure(given.Temperature("T"), out var bubble)
            || !held.Dew!.TryPressure(given.Temperature("T"), out var dew))
            return Given.OutOfRange($"T is covered for {Range(held.Bubble)}");
        double Over(AbsolutePressure pressure) => pressure.Pascals - given["p_atm"];
        return blend
            ? given.Answer(bubble.Pascals, Over(bubble), dew.Pascals, Over(dew))
            : given.Answer(bubble.Pascals, Over(bubble));
    }

    private static CalculationResult SaturationTemperature(Given given)
    {
        if (Find(given) is not (Refrigerant held, _))
            return Find(given).Refusal!;
        if (held.IsBlend && !given.Has("curve") && given["p"] <= held.Dew!.Highest.Pascals)
            return Given.Invalid("curve is missing: bubble or dew");
        var curve = held.Curve(given.Has("curve") ? given.Word("curve") : "dew")!;
        return curve.TryTemperature(given.Absolute("p"), out var temperature)
            ? given.Answer(temperature)
            : Given.OutOfRange($"p is covered for {Pressure(curve.Lowest)} to {Pressure(curve.Highest)} kPa absolute");
    }

    /// <summary>The saturation temperature, and how far another temperature lies above it (sign 1) or below
    /// (-1).</summary>
    internal static CalculationResult Difference(Given given, string curve, int sign, string other = "T_line")
    {
        if (Find(given) is not (Refrigerant held, _))
            return Find(given).Refusal!;
        return At(given, held, curve, given.Absolute("p_atm"), out var saturation)
            ?? given.From(saturation!.Derivation).Answer(
                saturation.AtGauge, sign * (given[other] - saturation.AtGauge.Celsius));
    }

    private static CalculationResult AltitudeError(Given given)
    {
        if (Find(given) is not (Refrigerant held, _))
            return Find(given).Refusal!;
        var curve = given.Word("curve");
        return At(given, held, curve, StandardAtmosphere.PressureAt(given["altitude"]), out var real)
            ?? At(given, held, curve, AbsolutePressure.StandardAtmosphere, out var assumed)
            ?? given.From(real!.Derivation).From(assumed!.Derivation).Answer(real.AtGauge, assumed.AtGauge);
    }

    private static CalculationResult? At(
        Given given, Refrigerant held, string curve, AbsolutePressure atmosphere, out Saturation? saturation)
    {
        saturation = Saturation.At(held, curve, given.Gauge("p_gauge"), atmosphere, Units.Celsius);
        if (given["p_gauge"] + atmosphere.Pascals <= 0)
            return Given.Invalid("p_gauge is below a perfect vacuum");
        return saturation is null ? Given.OutOfRange(
            $"the pressure is outside of the curve, {Range(held.Curve(curve)!)}") : null;
    }

    private static string Range(SaturationCurve curve) =>
        $"{NumberText.Of(curve.Coldest.Celsius, 5)} to {NumberText.Of(curve.Hottest.Celsius, 5)} °C";

    private static string Pressure(AbsolutePressure pressure) => NumberText.Of(pressure.Pascals / 1000, 5);
}
