using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Air;
using DxAssistant.Knowledge.Calculations.Circuit;
using DxAssistant.Knowledge.Calculations.Doubt;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>A gauge and a thermometer against the saturation curve: superheat, subcooling, or saturation against
/// air.</summary>
/// <remarks>
/// The air pressure moves by about 3 kPa with the weather (common practice, no source). Without an altitude it may be
/// anything from sea level to 1,500 m: sea level is taken, with the difference as the limit of error.
/// </remarks>
internal sealed class RefrigerantLineJudge : ReadingJudge
{
    private const double WeatherPascals = 3_000;
    private static readonly double UnknownAltitudePascals =
        AbsolutePressure.StandardAtmosphere.Pascals - StandardAtmosphere.PressureAt(1_500).Pascals;

    private readonly LineFigure _figure;

    private RefrigerantLineJudge(string name, string pressure, string temperature, LineFigure figure) : base(
        name,
        [new(pressure, QuantityKind.GaugePressure), new(temperature, QuantityKind.Temperature)],
        [
            Need.Refrigerant,
            Need.Number("low", QuantityKind.TemperatureDifference, "least value"),
            Need.Number("high", QuantityKind.TemperatureDifference, "largest value"),
            Need.Number("most", QuantityKind.TemperatureDifference,
                "what no unit goes past: beyond it one of the two was misread", required: false),
            Need.Altitude, Need.Gauge, Need.Thermometer,
        ],
        [VerdictKind.Within, VerdictKind.Low, VerdictKind.High]) => _figure = figure;

    public static ImmutableArray<RefrigerantLineJudge> All =>
    [
        new("saturation-split", "pressure", "air temperature", LineFigure.SaturationSplit),
        new("subcooling", "liquid pressure", "liquid line", LineFigure.Subcooling),
        new("superheat", "suction pressure", "suction line", LineFigure.Superheat),
    ];

    protected override Citation Source => new("Saturation curve of the refrigerant", _figure.Formula);

    protected override bool IsPossible(Facts facts, int index) => index == 0
        ? facts[0] + AtmosphereOf(facts) > 0
        : facts[1] is > -100 and < 250;

    protected override Contradiction? ContradictionIn(Facts facts) =>
        facts.Has("most") && facts.IsNumber(0) && facts.IsNumber(1)
            && _figure.SaturationSign * (PointOf(facts, RefrigerantOf(facts)).Celsius - facts[1]) > facts.Si("most")
            ? new Contradiction("too-far-apart") : null;

    private static Refrigerant RefrigerantOf(Facts facts) => Refrigerant.FindCurved(facts.Word("refrigerant"))
        ?? throw new ArgumentException($"no saturation curve is held for {facts.Word("refrigerant")}", nameof(facts));

    private SaturationPoint PointOf(Facts facts, Refrigerant refrigerant) =>
        SaturationPoint.At(refrigerant, _figure.Curve, facts[0], AtmosphereOf(facts));

    protected override Finding Find(Facts facts)
    {
        var refrigerant = RefrigerantOf(facts);
        var point = PointOf(facts, refrigerant);
        var figure = Measure(facts, refrigerant, point);
        var (low, high) = (facts.Si("low"), facts.Si("high"));
        var gauge = point.KelvinsPerPascal * facts.OfLimit("gauge");
        var finding = figure.Against(low, high, facts.OfLimit("thermometer") >= gauge ? ToSettle.WaitTemperatureSettle
            : ToSettle.Repeat, Source);
        return point.Outside == 0 || IsCertain(finding, point.Outside * _figure.SaturationSign)
            ? finding
            : finding with { Weights = Even, Settle = ToSettle.OutsideTable };
    }

    // Without a table nothing is known: every verdict is as likely.
    private ImmutableSortedDictionary<VerdictKind, double> Even =>
        Verdicts.ToImmutableSortedDictionary(verdict => verdict, _ => 1.0 / Verdicts.Length);

    // The curve ended; what lies beyond it moves the figure further the same way, so that a figure already past a
    // limit stays past it.
    private static bool IsCertain(Finding finding, int direction) =>
        finding.Weights.GetValueOrDefault(direction > 0 ? VerdictKind.High
            : VerdictKind.Low) >= DecisionRule.Probability;

    private Figure Measure(Facts facts, Refrigerant refrigerant, SaturationPoint point)
    {
        var line = facts.Reading(1).Unit;
        var unit = Kinds.Difference(line);
        var value = _figure.SaturationSign * (point.Celsius - facts[1]);
        var how = Derivation.Of(_figure.Formula, Source).With("T", facts[1], line).Gives(_figure.Name, value, unit)
            .From(point.Reasoned(refrigerant, facts[0], facts.Reading(0).Unit, AtmosphereOf(facts), line));
        return Figure.Of(
            _figure.Name, value, unit, how,
            ("gauge", point.KelvinsPerPascal * facts.OfLimit("gauge")),
            ("air pressure", point.KelvinsPerPascal * AirUncertainty(facts)),
            ("thermometer", facts.OfLimit("thermometer")), ("glide", Uncertainty.OfLimit(point.HalfGlideKelvins)));
    }

    private static double AtmosphereOf(Facts facts) =>
        StandardAtmosphere.PressureAt(Math.Clamp(facts.Or("altitude", 0), -5_000, 11_000)).Pascals;

    private static double AirUncertainty(Facts facts) => Uncertainty.Combined(
        (1, Uncertainty.OfLimit(WeatherPascals)), (1, facts.Has("altitude") ? 0
            : Uncertainty.OfLimit(UnknownAltitudePascals)));
}
