using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Doubt;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>Which of three windings are open or shorted, each with its probability, and the pattern they
/// make.</summary>
internal sealed record WindingSet(Facts Facts, ImmutableArray<double> Open, ImmutableArray<double> Short,
    double OpenFrom, double ShortBelow)
{
    private const double OpenOhms = 100_000;

    public bool AllNumbers => Facts.Indices.All(Facts.IsNumber);

    /// <summary>Probability that none is open.</summary>
    private double Closed => Open.Aggregate(1.0, (product, open) => product * (1 - open));

    /// <summary>Probability that none is open or shorted.</summary>
    public double Sound => Open.Zip(Short).Aggregate(1.0, (product, pair) =>
        product * Math.Max(0, 1 - pair.First - pair.Second));

    public ImmutableSortedDictionary<VerdictKind, double> BrokenWeights =>
        ImmutableSortedDictionary<VerdictKind, double>.Empty
        .Add(VerdictKind.OpenCircuit, 1 - Closed).Add(VerdictKind.ShortCircuit, Math.Max(0, Closed - Sound));

    public static WindingSet Of(Facts facts)
    {
        var openFrom = facts.Has("nominal") ? Math.Min(OpenOhms, 100 * facts.Si("nominal")) : OpenOhms;
        var largest = facts.Indices.Where(i => facts.IsNumber(i) && facts[i] < openFrom).Select(i => facts[i])
            .DefaultIfEmpty(0).Max();
        var shortBelow = facts.Has("nominal") ? facts.Si("nominal") / 10
            : Math.Max(largest / 10, facts.Meter.At(QuantityKind.Resistance, 0).LimitOfError(0));
        return new WindingSet(
            facts, [.. facts.Indices.Select(i => Share(facts, i, facts.IsOpen(i), double.NegativeInfinity, openFrom)
                .Above)],
            [.. facts.Indices.Select(i => Share(facts, i, facts.IsShort(i), shortBelow, double.PositiveInfinity)
                .Below)], openFrom, shortBelow);
    }

    /// <summary>The reading that says open although current has a way round by the third terminal; null when none
    /// does.</summary>
    public string? Contradiction()
    {
        var open = Facts.Indices.Where(i => Open[i] > 0.5).ToArray();
        return open.Length == 1 ? Facts.Label(open[0]) : null;
    }

    /// <summary>Adds the odd one and the pattern of open windings.</summary>
    public Finding Named(Finding finding)
    {
        var open = Facts.Indices.Where(i => Open[i] > 0.5).ToArray();
        var shorted = Facts.Indices.Where(i => Short[i] > 0.5).ToArray();
        return (open.Length, shorted.Length) switch
        {
            (3, _) => finding with { Pattern = "all-open", OddOneOut = null },
            (2, _) => finding with { Pattern = "one-terminal-open",
                OddOneOut = TerminalNames.Common(Facts.Label(open[0]), Facts.Label(open[1])) },
            (_, 3) => finding with { Pattern = "all-short", OddOneOut = null },
            (_, > 0) => finding with { Pattern = null, OddOneOut = Facts.Label(shorted[0]) },
            _ => finding,
        };
    }

    /// <summary>One reading twice as large as the two others, which are equal: a delta with one phase open.</summary>
    public static string? PatternOf(OddOne odd)
    {
        var others = odd.Values.Where((_, i) => i != odd.Index).ToArray();
        var alike = Math.Abs(others[0] - others[1]) <= 0.05 * others.Average();
        return alike && Math.Abs(odd.Values[odd.Index] / others.Average() - 2) <= 0.1 ? "delta-phase-open" : null;
    }

    private static (double Below, double Inside, double Above) Share(
        Facts facts, int index, bool said, double least, double most) =>
        facts.IsNumber(index) ? Conformance.Of(facts[index], facts.OfMeter(index), least, most)
        : said ? (1, 0, 1)
        : (0, 1, 0);
}
