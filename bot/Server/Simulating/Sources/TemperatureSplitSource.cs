using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Server.Simulating.Sources;

/// <summary>Air before and after a coil.</summary>
internal sealed class TemperatureSplitSource : IReadingSource
{
    public string Calculation => "temperature-split";

    public ImmutableArray<TrueReading> Draw(VerdictKind condition, ReadingSetup setup)
    {
        double low = setup.Given("low"), high = setup.Given("high");
        double? kelvins = condition switch
        {
            VerdictKind.Within => setup.Inside(low, high),
            VerdictKind.Low => low * setup.Between(0, 0.6),
            VerdictKind.High => setup.Above(high, high - low),
            _ => null,
        };
        if (kelvins is not { } split) return [];
        double air = setup.Surroundings.Indoor;
        double after = air - split >= setup.Check.Readings[1].Lowest ? air - split : air + split;
        return [TrueReading.Of(air), TrueReading.Of(after)];
    }
}
