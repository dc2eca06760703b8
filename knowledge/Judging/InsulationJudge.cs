using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Doubt;
using DxAssistant.Knowledge.Calculations.Electrics;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>Insulation to ground of one winding or of three.</summary>
/// <remarks>An insulation tester that shows more than it can measure (open) means good insulation.</remarks>
internal sealed class InsulationJudge() : ReadingJudge(
    "insulation",
    [new("first", QuantityKind.Resistance), new("second", QuantityKind.Resistance),
        new("third", QuantityKind.Resistance)],
    [Need.Number("minimum", QuantityKind.Resistance, "least insulation of a good winding"), Need.Meter],
    [VerdictKind.Within, VerdictKind.Low])
{
    public override ImmutableArray<int> Counts => [1, 3];

    protected override Citation Source => Insulation.Standard with { Place =
        "least insulation; the page's own minimum" };

    protected override bool Accepts(Facts facts, int index) => true;

    protected override Finding Find(Facts facts)
    {
        var minimum = facts.Si("minimum");
        var how = Derivation.Of("every reading at or above the minimum", Source)
            .With("minimum", minimum, facts.Number("minimum").Unit);
        var figures = facts.Indices.Select(index => At(facts, index, how)).ToImmutableArray();
        var inside = figures.Select(figure => Conformance.Of(
            figure.Value, figure.Uncertainty, minimum, double.PositiveInfinity).Inside).ToArray();
        var within = inside.Aggregate(1.0, (product, share) => product * share);
        var worst = Array.IndexOf(inside, inside.Min());
        return new Finding(
            ImmutableSortedDictionary<VerdictKind, double>.Empty.Add(VerdictKind.Within, within)
                .Add(VerdictKind.Low, 1 - within),
            figures[worst].Reasoned(minimum, null), [.. facts.Indices.Select(
                index => Band(facts, index, figures[index], minimum))], ToSettle.Repeat, Source)
        {
            OddOneOut = facts.Count > 1 && within < 0.5 ? facts.Label(worst) : null,
        };
    }

    // Open reads as endless insulation, a short as none.
    private static Figure At(Facts facts, int index, Derivation how) => facts.IsNumber(index)
        ? Figure.Of(facts.Label(index), facts[index], facts.Reading(index).Unit, how, ("meter", facts.OfMeter(index)))
        : new Figure(facts.Label(index), facts.IsOpen(index) ? 1e15 : 0, 0, Units.MegaOhm, how);

    private static ExpectedBand Band(Facts facts, int index, Figure figure, double minimum) => facts.IsNumber(index)
        ? figure.Band(minimum, null, null)
        : new ExpectedBand(figure.Name, facts.Number("minimum"), null, null, null, null);
}
