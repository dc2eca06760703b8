using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Doubt;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>A contact, fuse or wire: closed, open, or something in between.</summary>
internal sealed class ContinuityJudge() : ReadingJudge(
    "continuity",
    [new("resistance", QuantityKind.Resistance)],
    [
        Need.Number("closed", QuantityKind.Resistance, "at or below this it is closed"),
        Need.Number("open", QuantityKind.Resistance, "at or above this it is open"),
        Need.Meter,
    ],
    [VerdictKind.Closed, VerdictKind.OpenCircuit, VerdictKind.High])
{
    protected override Citation Source => Citation.CommonPractice with { Place = "continuity of a contact" };

    protected override bool Accepts(Facts facts, int index) => true;

    protected override Finding Find(Facts facts)
    {
        var (closed, open) = (facts.Si("closed"), facts.Si("open"));
        var how = Derivation.Of("closed up to closed, open from open", Source)
            .With("closed", closed, facts.Number("closed").Unit).With("open", open, facts.Number("open").Unit);
        if (!facts.IsNumber(0))
            return new Finding(
                Finding.Certainly(facts.IsOpen(0) ? VerdictKind.OpenCircuit : VerdictKind.Closed), how,
                [new ExpectedBand(facts.Label(0), null, null, facts.Number("closed"), null, null)], ToSettle.Repeat,
                    Source);
        var figure = Figure.Of(facts.Label(0), facts[0], facts.Reading(0).Unit, how, ("meter", facts.OfMeter(0)));
        return figure.Against(null, closed, ToSettle.BetterRange, Source) with
        {
            Weights = Zone.Weigh(
                facts[0], figure.Uncertainty, new Zone(VerdictKind.Closed, closed),
                new Zone(VerdictKind.High, open, EndIncluded: false),
                Zone.Above(VerdictKind.OpenCircuit)),
        };
    }
}
