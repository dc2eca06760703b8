using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Server.Simulating.Sources;

/// <summary>A rectified supply: the peak of the wave, or what a boost stage makes of it.</summary>
internal sealed class DcBusSource : IReadingSource
{
    public string Calculation => "dc-bus";

    public ImmutableArray<TrueReading> Draw(VerdictKind condition, ReadingSetup setup)
    {
        double supply = setup.Between(222, 242), tolerance = setup.Given("tolerance");
        double healthy = Math.Max(Math.Sqrt(2) * supply, setup.Si("boost") ?? 0);
        double? bus = condition switch
        {
            VerdictKind.Within => healthy * setup.Inside(1 - tolerance, 1 + tolerance),
            VerdictKind.Low => healthy * setup.Between(0.05, 1 - 2 * tolerance),
            VerdictKind.High => healthy * setup.Between(1 + 2 * tolerance, 1 + 3 * tolerance),
            _ => null,
        };
        return bus is { } volts ? [TrueReading.Of(supply), TrueReading.Of(volts)] : [];
    }
}
