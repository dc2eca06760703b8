using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>One voltage against the limits around its nominal value.</summary>
internal sealed class SupplyLimitsJudge() : ReadingJudge(
    "supply-limits",
    [new("voltage", QuantityKind.Voltage)],
    [
        Need.Number("nominal", QuantityKind.Voltage, "rated voltage"),
        Need.Number("below", QuantityKind.Ratio, "how far below it may be"),
        Need.Number("above", QuantityKind.Ratio, "how far above it may be"),
        Need.Meter,
    ],
    [VerdictKind.Within, VerdictKind.Low, VerdictKind.High])
{
    protected override Citation Source => Citation.Textbook("nominal value and its tolerance");

    protected override Finding Find(Facts facts)
    {
        var nominal = facts.Si("nominal");
        var (low, high) = (nominal * (1 - facts.Si("below")), nominal * (1 + facts.Si("above")));
        var unit = facts.Reading(0).Unit;
        var how = Derivation.Of("low = nominal (1 - below), high = nominal (1 + above)", Source)
            .With("nominal", nominal, unit).With("below", facts.Si("below"), Units.Percent)
                .With("above", facts.Si("above"), Units.Percent)
            .Gives("low", low, unit).Gives("high", high, unit);
        return Figure.Of(facts.Label(0), facts[0], unit, how, ("meter", facts.OfMeter(0)))
            .Against(low, high, ToSettle.BetterRange, Source, nominal);
    }
}
