using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Server.Simulating.Sources;

/// <summary>One voltage around its nominal value.</summary>
internal sealed class SupplyLimitsSource : IReadingSource
{
    public string Calculation => "supply-limits";

    public ImmutableArray<TrueReading> Draw(VerdictKind condition, ReadingSetup setup)
    {
        double nominal = setup.Given("nominal"), below = setup.Given("below"), above = setup.Given("above");
        double? volts = condition switch
        {
            VerdictKind.Within => nominal * setup.Inside(1 - below, 1 + above),
            VerdictKind.Absent => nominal * setup.Between(0, 0.05),
            VerdictKind.Low => nominal * setup.Between(0.3, 1) * (1 - 1.5 * below),
            VerdictKind.High => nominal * (1 + setup.Between(1.5, 3) * above),
            _ => null,
        };
        return volts is { } value ? [TrueReading.Of(Math.Min(value, setup.Check.Readings[0].Highest))] : [];
    }
}
