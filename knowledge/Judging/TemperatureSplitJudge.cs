using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>The size of the difference between two temperatures, such as return and supply air.</summary>
internal sealed class TemperatureSplitJudge() : ReadingJudge(
    "temperature-split",
    [new("return air", QuantityKind.Temperature), new("supply air", QuantityKind.Temperature)],
    [
        Need.Number("low", QuantityKind.TemperatureDifference, "least difference"),
        Need.Number("high", QuantityKind.TemperatureDifference, "largest difference"),
        Need.Thermometer,
    ],
    [VerdictKind.Within, VerdictKind.Low, VerdictKind.High])
{
    protected override Citation Source => Citation.Textbook("difference of two temperatures");

    protected override Finding Find(Facts facts)
    {
        var (one, other) = (facts.Reading(0).Unit, facts.Reading(1).Unit);
        var split = Math.Abs(facts[0] - facts[1]);
        var unit = Kinds.Difference(one);
        var how = Derivation.Of("split = |T1 - T2|", Source).With("T1", facts[0], one).With("T2", facts[1], other)
            .Gives("split", split, unit);
        var u = facts.OfLimit("thermometer");
        return Figure.Of("split", split, unit, how, ("thermometer on T1", u), ("thermometer on T2", u))
            .Against(Least(facts), facts.Si("high"), ToSettle.WaitTemperatureSettle, Source);
    }

    // The size of a difference is never below 0: with 0 as the least, equal temperatures are not near a limit.
    private static double? Least(Facts facts) => facts.Si("low") > 0 ? facts.Si("low") : null;
}
