using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Server.Simulating.Sources;

/// <summary>A direct voltage: none or less where it is low, the other way round where cores are crossed.</summary>
internal sealed class PolarBandSource : IReadingSource
{
    public string Calculation => "polar-band";

    public ImmutableArray<TrueReading> Draw(VerdictKind condition, ReadingSetup setup)
    {
        double low = setup.Given("low"), high = setup.Given("high");
        double? volts = condition switch
        {
            VerdictKind.Within => setup.Inside(low, high),
            VerdictKind.Low => low * setup.Between(0, 0.8),
            VerdictKind.High => setup.Above(high, high - low),
            VerdictKind.Reversed => -setup.Inside(low, high),
            _ => null,
        };
        return volts is { } drawn ? [TrueReading.Of(drawn)] : [];
    }
}
