using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Server.Simulating.Sources;

/// <summary>Three line voltages, equal or with one that sags.</summary>
internal sealed class VoltageUnbalanceSource : IReadingSource
{
    public string Calculation => "voltage-unbalance";

    public ImmutableArray<TrueReading> Draw(VerdictKind condition, ReadingSetup setup)
    {
        double limit = setup.Given("limit"), volts = setup.Between(392, 408);
        if (condition == VerdictKind.Absent)
            return [.. Enumerable.Repeat(TrueReading.Of(setup.Between(0, 5)), 3)];
        double? sag = condition switch
        {
            VerdictKind.Within => setup.Between(0, limit),
            VerdictKind.High => setup.Between(3, 6) * limit,
            _ => null,
        };
        return sag is { } share
            ? [TrueReading.Of(volts), TrueReading.Of(volts * (1 - share)), TrueReading.Of(volts)]
            : [];
    }
}
