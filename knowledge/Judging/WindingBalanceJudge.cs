using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Doubt;
using DxAssistant.Knowledge.Calculations.Electrics;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>Three windings of a motor: equal to each other, and near to nominal where one is known.</summary>
/// <remarks>
/// From 100 kΩ, or a hundred times nominal, a winding is open; below a tenth of nominal (or of the largest reading) it
/// is shorted (common practice, no source). The meter's share of the reading is common to the three and cancels out of
/// their balance. Nominal holds at 20 °C between terminals and is taken to the winding's temperature.
/// </remarks>
internal sealed class WindingBalanceJudge() : ReadingJudge(
    "winding-balance",
    [new("U-V", QuantityKind.Resistance), new("V-W", QuantityKind.Resistance), new("U-W", QuantityKind.Resistance)],
    [
        Need.Number("limit", QuantityKind.Ratio, "largest deviation from the mean, as a share of it"),
        Need.Meter,
        Need.Number("nominal", QuantityKind.Resistance, "between terminals at 20 °C", required: false),
        Need.Number("nominal-tolerance", QuantityKind.Ratio, "how far the mean may be from nominal; 20 % unless given",
            required: false),
        Need.Number("temperature", QuantityKind.Temperature, "of the winding; 20 °C unless given", required: false),
    ],
    [VerdictKind.Within, VerdictKind.Low, VerdictKind.High, VerdictKind.Unequal, VerdictKind.OpenCircuit,
        VerdictKind.ShortCircuit])
{
    /// <summary>Below this the meter's leads decide.</summary>
    private const double SmallOhms = 1;

    protected override Citation Source => Citation.CommonPractice with { Place =
        "three windings equal; largest deviation from the mean" };

    protected override bool Accepts(Facts facts, int index) => true;

    protected override Contradiction? ContradictionIn(Facts facts) =>
        WindingSet.Of(facts).Contradiction() is { } which ? new Contradiction("one-reading-open", which)
        : facts.Indices.All(facts.IsNumber) && !Triangle.Closes(facts) ? new Contradiction("resistances-do-not-close")
        : null;

    protected override Finding Find(Facts facts)
    {
        var set = WindingSet.Of(facts);
        return set.AllNumbers && set.Sound > 0 ? Balanced(facts, set) : Broken(facts, set);
    }

    private Finding Broken(Facts facts, WindingSet set)
    {
        var how = Derivation.Of("open from open_from, short below short_below", Source)
            .With("open_from", set.OpenFrom, Units.KiloOhm).With("short_below", set.ShortBelow, Units.Ohm);
        var finding = new Finding(set.BrokenWeights, how, [.. facts.Indices.Select(index => Plain(facts, index))],
            ToSettle.Repeat, Source);
        return set.Named(finding);
    }

    private Finding Balanced(Facts facts, WindingSet set)
    {
        var unit = facts.Reading(0).Unit;
        var odd = OddOne.Of([facts[0], facts[1], facts[2]]);
        var limit = facts.Si("limit");
        var how = Derivation.Of("unbalance = max |R - mean| / mean", Source).With(facts.Label(0), facts[0], unit)
            .With(facts.Label(1), facts[1], unit)
            .With(facts.Label(2), facts[2], unit).Gives("mean", odd.Mean, unit)
                .Gives("unbalance", odd.Share, Units.Percent);
        var share = Figure.Of("unbalance", odd.Share, Units.Percent, how,
            ("meter", odd.ShareUncertainty(OddOne.CountsOf(facts.MeterAt(odd.Index)))));
        var (_, equal, unequal) = Conformance.Of(share.Value, share.Uncertainty, double.NegativeInfinity, limit);
        var mean = Nominal(facts, odd.Mean, unit);
        var weights = set.BrokenWeights.ToBuilder();
        weights[VerdictKind.Unequal] = set.Sound * unequal;
        foreach (var (verdict, weight) in mean?.Weights ?? Finding.Certainly(VerdictKind.Within))
            weights[verdict] = weights.GetValueOrDefault(verdict) + set.Sound * equal * weight;
        var finding = new Finding(
            weights.ToImmutable(), share.Reasoned(null, limit).From(mean is null ? [] : [mean.Derivation]),
            [.. facts.Indices.Select(index => Around(facts, index, odd.Mean, limit)), .. mean?.Expected ?? []],
            odd.Mean < SmallOhms ? ToSettle.FourWire : ToSettle.BetterRange, Source)
        {
            OddOneOut = odd.Share > limit ? facts.Label(odd.Index) : null,
            Pattern = odd.Share > limit ? WindingSet.PatternOf(odd) : null,
        };
        return set.Named(finding);
    }

    /// <summary>The mean against nominal; null when none is known.</summary>
    private Finding? Nominal(Facts facts, double mean, Unit unit)
    {
        if (!facts.Has("nominal"))
            return null;
        var at = Temperature.FromCelsius(Math.Clamp(facts.Or("temperature", 20), -60, 200));
        var nominal = Winding.AtTemperature(Resistance.FromOhms(facts.Si("nominal")), Temperature.FromCelsius(20), at)
            .Ohms;
        var tolerance = facts.Or("nominal-tolerance", 0.2);
        var how = Derivation.Of("expected = nominal (235 + T) / (235 + 20)", Winding.TemperatureLaw)
            .With("nominal", facts.Si("nominal"), unit).With("T", at.Celsius, Units.Celsius)
                .Gives("expected", nominal, unit);
        return Figure.Of("mean", mean, unit, how, ("meter", facts.MeterAt(0).StandardUncertainty(mean)))
            .Against(nominal * (1 - tolerance), nominal * (1 + tolerance), ToSettle.BetterRange, Source, nominal);
    }

    private static ExpectedBand Around(Facts facts, int index, double mean, double limit)
    {
        var unit = facts.Reading(index).Unit;
        return new ExpectedBand(
            facts.Label(index), (mean * (1 - limit)).In(unit), mean.In(unit), (mean * (1 + limit)).In(unit),
            facts[index].In(unit), facts.OfMeter(index).In(unit));
    }

    private static ExpectedBand Plain(Facts facts, int index) => new(
        facts.Label(index), null, facts.Has("nominal") ? facts.Number("nominal") : null, null,
        facts.IsNumber(index) ? facts[index].In(facts.Reading(index).Unit) : null, null);
}
