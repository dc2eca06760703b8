using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Doubt;
using DxAssistant.Knowledge.Calculations.Electrics;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>A split supply: leg to leg at its nominal value, each leg to ground at half of it.</summary>
/// <remarks>
/// Absent when all three are below a tenth of what they should be. Unequal when one leg is inside its limits and the
/// other is not, or one is low and the other high. What such sets mean is <see cref="SplitPattern"/>'s.
/// </remarks>
internal sealed class SplitSupplyJudge() : ReadingJudge(
    "split-supply",
    [new("L1-L2", QuantityKind.Voltage), new("L1-ground", QuantityKind.Voltage),
        new("L2-ground", QuantityKind.Voltage)],
    [
        Need.Number("nominal", QuantityKind.Voltage, "rated voltage leg to leg"),
        Need.Number("below", QuantityKind.Ratio, "how far below it may be"),
        Need.Number("above", QuantityKind.Ratio, "how far above it may be"),
        Need.Meter,
    ],
    [VerdictKind.Within, VerdictKind.Low, VerdictKind.High, VerdictKind.Unequal, VerdictKind.Absent])
{
    protected override Citation Source => SupplyLimits.SplitSupply;

    protected override Contradiction? ContradictionIn(Facts facts) =>
        IsAbsent(facts) ? null
        : !Triangle.Closes(facts) ? new Contradiction("voltages-do-not-close")
        : SplitPattern.IsNoSplitSupply(facts, facts.Si("nominal")) ? new Contradiction("no-split-supply")
        : null;

    protected override Finding Find(Facts facts)
    {
        var nominal = facts.Si("nominal");
        var unit = facts.Reading(0).Unit;
        var how = Derivation.Of("leg to leg = nominal, leg to ground = nominal / 2, each within below and above",
            Source)
            .With("nominal", nominal, unit).With("below", facts.Si("below"), Units.Percent)
                .With("above", facts.Si("above"), Units.Percent);
        var aims = new[] { nominal, nominal / 2, nominal / 2 };
        var figures = facts.Indices.Select(i => Figure.Of(
            facts.Label(i), facts[i], facts.Reading(i).Unit, how, ("meter", facts.OfMeter(i)))).ToArray();
        var (below, above) = (1 - facts.Si("below"), 1 + facts.Si("above"));
        var weights = Joint([.. figures.Select((figure, i) => Sides(figure, aims[i], below, above))]);
        var unequal = weights.GetValueOrDefault(VerdictKind.Unequal) > 0.5;
        return new Finding(
            weights, figures[0].Reasoned(nominal * below, nominal * above)
                .From([.. figures.Skip(1).Select(figure => figure.Reasoned(nominal / 2 * below, nominal / 2 * above))]),
            [.. figures.Select((figure, i) => figure.Band(aims[i] * below, aims[i], aims[i] * above))],
                ToSettle.BetterRange, Source)
        {
            OddOneOut = unequal ? facts.Label(Math.Abs(facts[1] - aims[1]) >= Math.Abs(facts[2] - aims[2]) ? 1 : 2)
                : null,
            Pattern = weights.GetValueOrDefault(VerdictKind.Within) < 0.5
                ? SplitPattern.Of(facts, nominal, below, above) : null,
        };
    }

    private static bool IsAbsent(Facts facts)
    {
        var limit = facts.Si("nominal") * SupplyLimits.AbsentShare;
        return facts[0] < limit && facts[1] < limit / 2 && facts[2] < limit / 2;
    }

    private static double[] Sides(Figure figure, double aim, double low, double high)
    {
        var (below, inside, above) = Conformance.Of(figure.Value, figure.Uncertainty, aim * low, aim * high);
        var absent = Math.Min(below, Conformance.Of(
            figure.Value, figure.Uncertainty, aim * SupplyLimits.AbsentShare, double.PositiveInfinity).Below);
        return [absent, below - absent, inside, above];
    }

    // Every combination of the sides, 0 absent, 1 below, 2 inside, 3 above, with its probability.
    private static ImmutableSortedDictionary<VerdictKind, double> Joint(ImmutableArray<double[]> sides)
    {
        var weights = ImmutableSortedDictionary.CreateBuilder<VerdictKind, double>();
        for (var line = 0; line < 4; line++)
            for (var one = 0; one < 4; one++)
                for (var two = 0; two < 4; two++)
                {
                    var verdict = Verdict(line, one, two);
                    weights[verdict] = weights.GetValueOrDefault(verdict)
                        + sides[0][line] * sides[1][one] * sides[2][two];
                }
        return weights.ToImmutable();
    }

    private static VerdictKind Verdict(int line, int one, int two) => line + one + two == 0 ? VerdictKind.Absent
        : Side(Math.Max(line, 1), Math.Max(one, 1), Math.Max(two, 1));

    private static VerdictKind Side(int line, int one, int two) => (line, one, two) switch
    {
        _ when one != two || line != 2 && one != 2 && line != one => VerdictKind.Unequal,
        (2, 2, _) => VerdictKind.Within,
        (1, _, _) or (_, 1, _) => VerdictKind.Low,
        _ => VerdictKind.High,
    };
}
