using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Doubt;

namespace DxAssistant.Knowledge.Judging;

/// <summary>A stretch of the number line and what a value in it means.</summary>
/// <param name="UpTo">Upper end; the lower end is that of the zone before.</param>
/// <param name="EndIncluded">Whether the end itself belongs to this zone; matters only without uncertainty.</param>
internal readonly record struct Zone(VerdictKind Verdict, double UpTo, bool EndIncluded = true)
{
    /// <summary>Low below a limit that is itself still within.</summary>
    public static Zone LowBelow(double limit) => new(VerdictKind.Low, limit, EndIncluded: false);

    public static Zone WithinUpTo(double limit) => new(VerdictKind.Within, limit);

    public static Zone Above(VerdictKind verdict) => new(verdict, double.PositiveInfinity);

    /// <summary>Probability of each verdict that the zones name, for a value with a standard uncertainty.</summary>
    /// <param name="zones">Rising; the last reaches to infinity.</param>
    /// <remarks>Source: JCGM 106:2012, clause 7.</remarks>
    public static ImmutableSortedDictionary<VerdictKind,
        double> Weigh(double value, double uncertainty, params ReadOnlySpan<Zone> zones)
    {
        var weights = ImmutableSortedDictionary.CreateBuilder<VerdictKind, double>();
        var from = double.NegativeInfinity;
        var rest = 1.0;
        foreach (var zone in zones)
        {
            var weight = uncertainty > 0 ? Normal.Between(
                (from - value) / uncertainty, (zone.UpTo - value) / uncertainty) : rest * zone.Holds(value);
            rest -= uncertainty > 0 ? 0 : weight;
            weights[zone.Verdict] = weights.GetValueOrDefault(zone.Verdict) + weight;
            from = zone.UpTo;
        }
        return weights.ToImmutable();
    }

    private double Holds(double value) =>
        Side.IsInside(value, UpTo, UpTo) && !double.IsInfinity(UpTo) ? EndIncluded ? 1 : 0 : value < UpTo ? 1 : 0;
}
