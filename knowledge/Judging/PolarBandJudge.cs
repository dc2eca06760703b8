using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>A direct voltage against a band, with its sign: the leads stand on named terminals.</summary>
/// <remarks>
/// What lies further the other way than half of the band's lower end is reversed: the two cores are crossed, or the
/// leads.
/// </remarks>
internal sealed class PolarBandJudge() : ReadingJudge(
    "polar-band",
    [new("reading", QuantityKind.Voltage)],
    [
        Need.Number("low", QuantityKind.Voltage, "lower end, included"),
        Need.Number("high", QuantityKind.Voltage, "upper end, included"),
        Need.Meter,
    ],
    [VerdictKind.Within, VerdictKind.Low, VerdictKind.High, VerdictKind.Reversed])
{
    protected override Citation Source => Citation.Textbook("a band of expected values, with its sign");

    protected override bool IsPossible(Facts facts, int index) => true;

    protected override Finding Find(Facts facts)
    {
        var (low, high) = (facts.Si("low"), facts.Si("high"));
        var figure = Figure.Of(facts.Label(0), facts[0], facts.Reading(0).Unit,
            Derivation.Of("low to high, ends included; reversed below -low / 2", Source), ("meter", facts.OfMeter(0)));
        return figure.Against(low, high, ToSettle.BetterRange, Source) with
        {
            Weights = Zone.Weigh(figure.Value, figure.Uncertainty,
                new Zone(VerdictKind.Reversed, -low / 2, EndIncluded: false),
                Zone.LowBelow(low), Zone.WithinUpTo(high), Zone.Above(VerdictKind.High)),
        };
    }
}
