using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Server.Simulating.Sources;

/// <summary>Two legs of a transformer with a tap in the middle: leg to leg is the sum of both legs.</summary>
internal sealed class SplitSupplySource : IReadingSource
{
    public string Calculation => "split-supply";

    public ImmutableArray<TrueReading> Draw(VerdictKind condition, ReadingSetup setup)
    {
        double leg = setup.Given("nominal") / 2, below = setup.Given("below"), above = setup.Given("above");
        (double One, double Two)? legs = condition switch
        {
            VerdictKind.Within => Same(leg * setup.Inside(1 - below, 1 + above)),
            VerdictKind.Low => Same(leg * setup.Between(1 - 3 * below, 1 - 1.5 * below)),
            VerdictKind.High => Same(leg * setup.Between(1 + 1.5 * above, 1 + 3 * above)),
            VerdictKind.Absent => Same(leg * setup.Between(0, 0.05)),
            VerdictKind.Unequal => Shifted(leg, leg * setup.Between(2, 4) * Math.Max(below, above)),
            _ => null,
        };
        return legs is { } pair
            ? [TrueReading.Of(pair.One + pair.Two), TrueReading.Of(pair.One), TrueReading.Of(pair.Two)]
            : [];
    }

    private static (double One, double Two) Same(double volts) => (volts, volts);

    // An open neutral: what one leg loses the other gains.
    private static (double One, double Two) Shifted(double leg, double volts) => (leg - volts, leg + volts);
}
