using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Server.Simulating.Sources;

/// <summary>Two temperatures of which the second should be the colder, or the warmer.</summary>
internal sealed class DirectedSplitSource : IReadingSource
{
    private readonly int _sign;

    private DirectedSplitSource(string calculation, int sign) => (Calculation, _sign) = (calculation, sign);

    public static ImmutableArray<DirectedSplitSource> All => [new("temperature-drop", -1), new("temperature-rise", 1)];

    public string Calculation { get; }

    public ImmutableArray<TrueReading> Draw(VerdictKind condition, ReadingSetup setup)
    {
        double low = setup.Given("low"), high = setup.Given("high");
        double? kelvins = condition switch
        {
            VerdictKind.Within => setup.Inside(low, high),
            VerdictKind.Low => low * setup.Between(0, 0.6),
            VerdictKind.High => setup.Above(high, high - low),
            VerdictKind.Reversed => -setup.Between(3, 12) - setup.Given("reversed"),
            _ => null,
        };
        double air = setup.Surroundings.Indoor;
        return kelvins is { } split ? [TrueReading.Of(air), TrueReading.Of(air + _sign * split)] : [];
    }
}
