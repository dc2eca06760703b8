using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Electrics;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>One voltage against the limits around its nominal value, and against none at all.</summary>
/// <remarks>Too low and absent are two troubles: a bad joint, and a supply that does not get there.</remarks>
internal sealed class SupplyLimitsJudge() : ReadingJudge(
    "supply-limits",
    [new("voltage", QuantityKind.Voltage)],
    [
        Need.Number("nominal", QuantityKind.Voltage, "rated voltage"),
        Need.Number("below", QuantityKind.Ratio, "how far below it may be"),
        Need.Number("above", QuantityKind.Ratio, "how far above it may be"),
        Need.Meter,
    ],
    [VerdictKind.Within, VerdictKind.Low, VerdictKind.High, VerdictKind.Absent])
{
    protected override Citation Source => Citation.Textbook("nominal value and its tolerance");

    protected override Finding Find(Facts facts)
    {
        var nominal = facts.Si("nominal");
        var absent = nominal * SupplyLimits.AbsentShare;
        var (low, high) = (nominal * (1 - facts.Si("below")), nominal * (1 + facts.Si("above")));
        var unit = facts.Reading(0).Unit;
        var how = Derivation.Of("low = nominal (1 - below), high = nominal (1 + above), absent below nominal / 10",
            Source)
            .With("nominal", nominal, unit).With("below", facts.Si("below"), Units.Percent)
                .With("above", facts.Si("above"), Units.Percent)
            .Gives("absent", absent, unit).Gives("low", low, unit).Gives("high", high, unit);
        var figure = Figure.Of(facts.Label(0), facts[0], unit, how, ("meter", facts.OfMeter(0)));
        return figure.Against(low, high, ToSettle.BetterRange, Source, nominal) with
        {
            Weights = Zone.Weigh(
                facts[0], figure.Uncertainty, new Zone(VerdictKind.Absent, Math.Min(absent, low), EndIncluded: false),
                Zone.LowBelow(low), Zone.WithinUpTo(high), Zone.Above(VerdictKind.High)),
        };
    }
}
