using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Electrics;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Judging;

/// <summary>Insulation to ground of a winding whose temperature was read, taken to 40 °C.</summary>
/// <remarks>
/// The standard's two rules differ: the more cautious one is taken, and the derivation names it. An insulation tester
/// that shows more than it can measure (open) means good insulation.
/// </remarks>
internal sealed class InsulationCorrectedJudge() : ReadingJudge(
    "insulation-corrected",
    [new("insulation", QuantityKind.Resistance), new("winding", QuantityKind.Temperature)],
    [
        Need.Number("minimum", QuantityKind.Resistance, "least insulation of a good winding at 40 °C"),
        Need.Meter, Need.Thermometer,
    ],
    [VerdictKind.Within, VerdictKind.Low])
{
    private const double HalfStep = 0.01;

    protected override Citation Source => Insulation.Standard with { Place =
        "least insulation at 40 °C; the page's own minimum" };

    protected override bool Accepts(Facts facts, int index) => index == 0 || facts.IsNumber(index);

    protected override bool IsPossible(Facts facts, int index) => index == 0
        ? base.IsPossible(facts, index)
        : facts[1] is >= Insulation.Coldest and <= Insulation.Hottest;

    protected override Finding Find(Facts facts)
    {
        var minimum = facts.Si("minimum");
        var unit = facts.Reading(0).Unit;
        if (!facts.IsNumber(0))
            return new Finding(
                Finding.Certainly(facts.IsOpen(0) ? VerdictKind.Within : VerdictKind.Low),
                Derivation.Of("open is more than the tester can show, a short is none", Source)
                    .With("minimum", minimum, unit),
                [new ExpectedBand(facts.Label(0), facts.Number("minimum"), null, null, null, null)], ToSettle.Repeat,
                Source);
        var (factor, how) = Correction(facts, unit);
        // d(K R)/dT for the thermometer: the factor's own slope.
        var slope = Math.Abs(FactorAt(facts[1] + HalfStep) - FactorAt(facts[1] - HalfStep)) / (2 * HalfStep);
        return Figure.Of("at 40 °C", factor * facts[0], unit, how, ("meter", factor * facts.OfMeter(0)),
            ("thermometer", slope * facts[0] * facts.OfLimit("thermometer")))
            .Against(minimum, null, ToSettle.WaitTemperatureSettle, Source);
    }

    private static double FactorAt(double celsius) => Insulation.CautiousFactor(
        Temperature.FromCelsius(Math.Clamp(celsius, Insulation.Coldest, Insulation.Hottest))).Factor;

    private static (double Factor, Derivation How) Correction(Facts facts, Unit unit)
    {
        var (factor, rule, source) = Insulation.CautiousFactor(Temperature.FromCelsius(facts[1]));
        return (factor, Derivation.Of("IR_40 = K IR; " + rule, source).With("IR", facts[0], unit)
            .With("T", facts[1], facts.Reading(1).Unit).Gives("K", factor, Units.One)
            .Gives("IR_40", factor * facts[0], unit));
    }
}
