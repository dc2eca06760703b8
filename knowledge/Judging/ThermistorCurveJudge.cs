using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Doubt;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>A sensor's resistance against its curve at the temperature beside it.</summary>
/// <remarks>
/// A reading ten times above or below the whole curve is taken for an open or shorted sensor (common practice, no
/// source).
/// </remarks>
internal sealed class ThermistorCurveJudge() : ReadingJudge(
    "thermistor-curve",
    [new("resistance", QuantityKind.Resistance), new("temperature", QuantityKind.Temperature)],
    [
        new("curve", InputForm.Curve, null, true, "curve of the sensor"),
        Need.Number("tolerance", QuantityKind.TemperatureDifference,
            "by how much a good sensor may be off, as a temperature"),
        Need.Meter, Need.Thermometer,
    ],
    [VerdictKind.Within, VerdictKind.Low, VerdictKind.High, VerdictKind.OpenCircuit, VerdictKind.ShortCircuit])
{
    private const double Beyond = 10;

    protected override Citation Source => new("Curve of the sensor",
        "ln R against 1/T; limits by the tolerance as a temperature");

    protected override bool Accepts(Facts facts, int index) => index == 0 || facts.IsNumber(index);

    protected override bool IsPossible(Facts facts, int index) => index == 0
        ? base.IsPossible(facts, index)
        : facts[1] >= facts.Curve.Coldest.Celsius && facts[1] <= facts.Curve.Hottest.Celsius;

    protected override Finding Find(Facts facts)
    {
        var at = Temperature.FromCelsius(facts[1]);
        var tolerance = Math.Abs(facts.Si("tolerance"));
        var (nominal, one, other) = (Ohms(facts, 0), Ohms(facts, -tolerance), Ohms(facts, tolerance));
        var (low, high) = (Math.Min(one, other), Math.Max(one, other));
        var shown = facts.IsNumber(0) ? facts.Reading(0).Unit : Units.KiloOhm;
        var how = Derivation.Of(facts.Curve.Formula, Source).With("T", facts[1], facts.Reading(1).Unit)
            .With("tolerance", tolerance, Units.Kelvin).Gives("R", nominal, shown).Gives("low", low, shown)
                .Gives("high", high, shown);
        if (!facts.IsNumber(0))
            return new Finding(
                Finding.Certainly(facts.IsOpen(0) ? VerdictKind.OpenCircuit : VerdictKind.ShortCircuit), how,
                [new ExpectedBand(facts.Label(0), low.In(shown), nominal.In(shown), high.In(shown), null, null)],
                    ToSettle.Repeat, Source);
        var warmth = Math.Abs(facts.Curve.SlopeAt(at)) * facts.OfLimit("thermometer");
        var figure = Figure.Of(facts.Label(0), facts[0], shown, how, ("meter", facts.OfMeter(0)),
            ("thermometer", warmth));
        return figure.Against(low, high, Settle(facts.OfMeter(0), warmth), Source,
            nominal) with { Weights = Weigh(facts, figure, low, high) };
    }

    protected override Finding? FindAlone(int index, Facts facts)
    {
        if (index != 0) return null;
        if (!facts.IsNumber(0))
            return Alone(Finding.Certainly(facts.IsOpen(0) ? VerdictKind.OpenCircuit : VerdictKind.ShortCircuit));
        if (facts.Reading(0).Unit.Kind != QuantityKind.Resistance || !base.IsPossible(facts, 0)) return null;
        var (shorted, inside, open) = Ends(facts, facts.OfMeter(0));
        // Between open and short the temperature decides.
        return inside > 1 - DecisionRule.Probability ? null : Alone(ImmutableSortedDictionary<VerdictKind, double>.Empty
            .Add(VerdictKind.Within, inside).Add(VerdictKind.ShortCircuit, shorted).Add(VerdictKind.OpenCircuit, open));
    }

    private Finding Alone(ImmutableSortedDictionary<VerdictKind, double> weights) =>
        new(weights, Derivation.Of("open or short at any temperature", Source), [], ToSettle.Repeat, Source);

    private static string Settle(double meter, double thermometer) =>
        thermometer >= meter ? ToSettle.WaitTemperatureSettle : ToSettle.BetterRange;

    private static ImmutableSortedDictionary<VerdictKind,
        double> Weigh(Facts facts, Figure figure, double low, double high)
    {
        // How warm it is does not matter for whether the sensor is open or shorted at all.
        var (shorted, _, open) = Ends(facts, facts.OfMeter(0));
        var weights = Zone.Weigh(figure.Value, figure.Uncertainty, Zone.LowBelow(low), Zone.WithinUpTo(high),
            Zone.Above(VerdictKind.High));
        return weights.ToImmutableSortedDictionary(pair => pair.Key, pair => pair.Value * (1 - shorted - open))
            .Add(VerdictKind.ShortCircuit, shorted).Add(VerdictKind.OpenCircuit, open);
    }

    // How likely it is shorted, on the curve at some temperature, open.
    private static (double Below, double Inside, double Above) Ends(Facts facts, double uncertainty)
    {
        var curve = facts.Curve;
        curve.TryResistance(curve.Coldest, out var cold);
        curve.TryResistance(curve.Hottest, out var hot);
        return Conformance.Of(facts[0], uncertainty, Math.Min(cold.Ohms, hot.Ohms) / Beyond,
            Math.Max(cold.Ohms, hot.Ohms) * Beyond);
    }

    // Past the end of the curve the limit is that of the end.
    private static double Ohms(Facts facts, double offset)
    {
        var celsius = Math.Clamp(facts[1] + offset, facts.Curve.Coldest.Celsius, facts.Curve.Hottest.Celsius);
        var kelvins = Math.Clamp(Temperature.FromCelsius(celsius).Kelvins, facts.Curve.Coldest.Kelvins,
            facts.Curve.Hottest.Kelvins);
        facts.Curve.TryResistance(Temperature.FromKelvins(kelvins), out var resistance);
        return resistance.Ohms;
    }
}
