using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>One reading of any quantity against a band.</summary>
/// <remarks>An open circuit reads as an endless resistance, a short as none.</remarks>
internal sealed class BandJudge() : ReadingJudge(
    "band",
    [new("reading", null)],
    [
        Need.Number("low", null, "lower end, included", required: false),
        Need.Number("high", null, "upper end, included", required: false),
        Need.Meter,
    ],
    [VerdictKind.Within, VerdictKind.Low, VerdictKind.High])
{
    protected override Citation Source => Citation.Textbook("a band of expected values");

    protected override bool Accepts(Facts facts, int index) =>
        facts.IsNumber(index) || facts.Reading(index).Unit.Kind == QuantityKind.Resistance;

    // A reading in a unit that does not fit the limits was typed in the wrong unit.
    protected override bool IsPossible(Facts facts, int index) => base.IsPossible(facts, index)
        && FitsLimit(facts, "low") && FitsLimit(facts, "high");

    protected override Finding Find(Facts facts)
    {
        double? Limit(string name) => facts.Has(name) ? facts.Number(name).Si : null;
        var (low, high) = (Limit("low"), Limit("high"));
        var how = Derivation.Of("low to high, ends included", Source);
        if (!facts.IsNumber(0))
            return new Finding(
                Finding.Certainly(facts.IsOpen(0) ? VerdictKind.High : VerdictKind.Low), how,
                [new ExpectedBand(facts.Label(0), facts.Has("low") ? facts.Number("low") : null, null,
                    facts.Has("high") ? facts.Number("high") : null, null, null)],
                ToSettle.Repeat, Source);
        return Figure.Of(facts.Label(0), facts[0], facts.Reading(0).Unit, how, ("meter", facts.OfMeter(0)))
            .Against(low, high, facts.Reading(0).Unit.Kind == QuantityKind.Temperature ? ToSettle.WaitTemperatureSettle
                : ToSettle.BetterRange, Source);
    }

    private static bool FitsLimit(Facts facts, string name) =>
        !facts.Has(name) || !facts.IsNumber(0) || Kinds.Same(facts.Number(name).Kind, facts.Reading(0).Unit.Kind);
}
