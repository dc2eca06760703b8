using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>
/// The difference between two temperatures of which one should be the warmer, such as air before and after a coil.
/// </summary>
/// <remarks>
/// Temperatures that differ the wrong way by more than the input <c>reversed</c> are a verdict of their own: heat flows
/// the other way. By less they are low, so that two thermometers that show the same do not come near to being reversed.
/// </remarks>
/// <param name="falls">True when the second should be the colder one.</param>
internal sealed class DirectedSplitJudge(string name, bool falls) : ReadingJudge(
    name,
    [new("temperature before", QuantityKind.Temperature), new("temperature after", QuantityKind.Temperature)],
    [
        Need.Number("low", QuantityKind.TemperatureDifference, "least difference"),
        Need.Number("high", QuantityKind.TemperatureDifference, "largest difference"),
        Need.Number("reversed", QuantityKind.TemperatureDifference,
            "difference the wrong way at which heat flows the other way"),
        Need.Thermometer,
    ],
    [VerdictKind.Within, VerdictKind.Low, VerdictKind.High, VerdictKind.Reversed])
{
    /// <summary>Both of them.</summary>
    public static ImmutableArray<DirectedSplitJudge> All { get; } =
        [new("temperature-drop", true), new("temperature-rise", false)];

    protected override Citation Source => Citation.Textbook("difference of two temperatures");

    protected override Finding Find(Facts facts)
    {
        var (one, other) = (facts.Reading(0).Unit, facts.Reading(1).Unit);
        var split = falls ? facts[0] - facts[1] : facts[1] - facts[0];
        var unit = Kinds.Difference(one);
        var how = Derivation.Of(falls ? "split = T1 - T2" : "split = T2 - T1", Source)
            .With("T1", facts[0], one).With("T2", facts[1], other).Gives("split", split, unit);
        var u = facts.OfLimit("thermometer");
        var figure = Figure.Of("split", split, unit, how, ("thermometer on T1", u), ("thermometer on T2", u));
        return figure.Against(facts.Si("low"), facts.Si("high"), ToSettle.WaitTemperatureSettle, Source)
            with { Weights = Weigh(facts, figure) };
    }

    private static ImmutableSortedDictionary<VerdictKind, double> Weigh(Facts facts, Figure figure) =>
        Zone.Weigh(figure.Value, figure.Uncertainty,
            new Zone(VerdictKind.Reversed, -Math.Abs(facts.Si("reversed")), EndIncluded: false),
            Zone.LowBelow(facts.Si("low")), Zone.WithinUpTo(facts.Si("high")), Zone.Above(VerdictKind.High));
}
