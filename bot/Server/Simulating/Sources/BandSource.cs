using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Server.Simulating.Sources;

/// <summary>One quantity against a band that may be open at one end.</summary>
internal sealed class BandSource : IReadingSource
{
    public string Calculation => "band";

    public ImmutableArray<TrueReading> Draw(VerdictKind condition, ReadingSetup setup)
    {
        double? low = setup.Si("low"), high = setup.Si("high");
        double width = low is { } from && high is { } to ? to - from : 0.5 * Math.Abs(low ?? high ?? 1);
        if (width == 0) width = 1;
        double? drawn = condition switch
        {
            VerdictKind.Within => setup.Inside(low ?? high!.Value - width, high ?? low!.Value + width),
            VerdictKind.Low when low is { } limit => setup.Below(limit, width),
            VerdictKind.High when high is { } limit => setup.Above(limit, width),
            _ => null,
        };
        return drawn is { } value && Possible(value, low, high, setup) is { } possible
            ? [TrueReading.Of(possible)]
            : [];
    }

    // What lies outside the possible range is taken to its end, where that still is the condition.
    private static double? Possible(double value, double? low, double? high, ReadingSetup setup)
    {
        double least = setup.Check.Readings[0].Lowest, most = setup.Check.Readings[0].Highest;
        double kept = Math.Clamp(value, least, most);
        bool changed = kept != value && ((low is { } from && value < from && kept >= from)
            || (high is { } to && value > to && kept <= to));
        return changed ? null : kept;
    }
}
