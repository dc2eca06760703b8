using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Doubt;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>The six diodes of a power module: three from P, three from N, each three alike and inside a band.</summary>
/// <remarks>
/// Below a third of the band a diode is shorted, above twice the band open (common practice, no source). A short weighs
/// before an open one: it settles the module's fate.
/// </remarks>
internal sealed class ModuleDiodesJudge() : ReadingJudge(
    "module-diodes",
    [
        new("P-U", QuantityKind.Voltage), new("P-V", QuantityKind.Voltage), new("P-W", QuantityKind.Voltage),
        new("N-U", QuantityKind.Voltage), new("N-V", QuantityKind.Voltage), new("N-W", QuantityKind.Voltage),
    ],
    [
        Need.Number("low", QuantityKind.Voltage, "lower end of a good drop"),
        Need.Number("high", QuantityKind.Voltage, "upper end of a good drop"),
        Need.Number("spread", QuantityKind.Voltage, "largest difference within three"),
        Need.Meter,
    ],
    [VerdictKind.Within, VerdictKind.Unequal, VerdictKind.OpenCircuit, VerdictKind.ShortCircuit])
{
    protected override Citation Source => Citation.CommonPractice with { Place = "diode test of a power module" };

    protected override bool Accepts(Facts facts, int index) => true;

    protected override Finding Find(Facts facts)
    {
        var (low, high, spread) = (facts.Si("low"), facts.Si("high"), facts.Si("spread"));
        var how = Derivation.Of("each drop low to high, each three within spread", Source)
            .With("low", low, Units.Volt).With("high", high, Units.Volt).With("spread", spread, Units.Volt);
        var drops = facts.Indices.Select(index => Drop.Of(facts, index, low, high)).ToImmutableArray();
        var (noShort, sound, good) = (Product(drops, drop => 1 - drop.Short),
            Product(drops, drop => 1 - drop.Short - drop.Open), Product(drops, drop => drop.Good));
        var within = good * Alike(facts, 0, spread) * Alike(facts, 3, spread);
        var weights = ImmutableSortedDictionary<VerdictKind, double>.Empty.Add(VerdictKind.ShortCircuit, 1 - noShort)
            .Add(VerdictKind.OpenCircuit, noShort - sound).Add(VerdictKind.Unequal, sound - within)
                .Add(VerdictKind.Within, within);
        return new Finding(weights, how, [.. facts.Indices.Select(index => Band(facts, index, low, high))],
            ToSettle.Repeat, Source)
        {
            OddOneOut = within < 0.5 ? facts.Label(Odd(facts, drops)) : null,
        };
    }

    private static double Product(ImmutableArray<Drop> drops, Func<Drop, double> share) =>
        drops.Aggregate(1.0, (product, drop) => product * share(drop));

    /// <summary>Probability that three drops lie within the spread; 1 when not all are numbers, for then another
    /// verdict stands.</summary>
    /// <remarks>The meter's share of the reading is common to the two and counts for their difference alone (GUM
    /// 5.2.2); the counts are not.</remarks>
    private static double Alike(Facts facts, int first, double spread)
    {
        var three = Enumerable.Range(first, 3).ToArray();
        if (!three.All(facts.IsNumber))
            return 1;
        var (low, high) = (three.MinBy(i => facts[i]), three.MaxBy(i => facts[i]));
        var (range, difference) = (facts.MeterAt(high), facts[high] - facts[low]);
        var u = Uncertainty.Combined((1, facts.MeterAt(low).StandardUncertainty(0)), (1, range.StandardUncertainty(0)),
            (1, (range with { Counts = 0 }).StandardUncertainty(difference)));
        return Conformance.Of(difference, u, double.NegativeInfinity, spread).Inside;
    }

    private static ExpectedBand Band(Facts facts, int index, double low, double high) => new(
        facts.Label(index), low.In(Units.Volt), null, high.In(Units.Volt),
        facts.IsNumber(index) ? facts[index].In(Units.Volt) : null,
            facts.IsNumber(index) ? facts.OfMeter(index).In(Units.Volt) : null);

    // First a short, then an open one, then the drop furthest from the middle of its three.
    private static int Odd(Facts facts, ImmutableArray<Drop> drops)
    {
        var broken = drops.Select((drop, i) => (drop, i))
            .OrderByDescending(pair => pair.drop.Short > 0.5 ? 2 : pair.drop.Open > 0.5 ? 1 : 0).ThenBy(pair => pair.i)
                .First();
        if (broken.drop.Short > 0.5 || broken.drop.Open > 0.5)
            return broken.i;
        double Middle(int index) => Enumerable.Range(index / 3 * 3, 3).Select(i => facts[i]).Order().ElementAt(1);
        return facts.Indices.OrderByDescending(i => NumberText.Round(Math.Abs(facts[i] - Middle(i)), 9)).ThenBy(i => i)
            .First();
    }

    /// <summary>Probabilities that one diode is shorted, open or good; the rest is off its band.</summary>
    private readonly record struct Drop(double Short, double Open, double Good)
    {
        public static Drop Of(Facts facts, int index, double low, double high)
        {
            if (!facts.IsNumber(index))
                return facts.IsOpen(index) ? new Drop(0, 1, 0) : new Drop(1, 0, 0);
            var (value, u) = (facts[index], facts.OfMeter(index));
            return new Drop(
                Conformance.Of(value, u, low / 3, double.PositiveInfinity).Below,
                Conformance.Of(value, u, double.NegativeInfinity, 2 * high).Above,
                Conformance.Of(value, u, low, high).Inside);
        }
    }
}
