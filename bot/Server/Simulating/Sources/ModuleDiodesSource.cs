using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Server.Simulating.Sources;

/// <summary>Six diodes of one chip: alike, but for the one that failed.</summary>
internal sealed class ModuleDiodesSource : IReadingSource
{
    private const int Diodes = 6;

    public string Calculation => "module-diodes";

    public ImmutableArray<TrueReading> Draw(VerdictKind condition, ReadingSetup setup)
    {
        double low = setup.Given("low"), high = setup.Given("high"), spread = setup.Given("spread");
        double middle = setup.Inside(low + spread, high - spread);
        var drops = new TrueReading[Diodes];
        for (int diode = 0; diode < Diodes; diode++)
            drops[diode] = TrueReading.Of(middle + setup.Between(-0.2, 0.2) * spread);
        if (condition == VerdictKind.Within) return [.. drops];
        drops[(int)(setup.Draws.NextShare() * Diodes)] = condition switch
        {
            VerdictKind.ShortCircuit => TrueReading.Of(setup.Between(0.001, 0.1 * low)),
            VerdictKind.OpenCircuit => TrueReading.Open,
            _ => TrueReading.Of(middle + (setup.Coin() ? 1 : -1) * Math.Max(2 * spread, 0.15 * middle)),
        };
        return [.. drops];
    }
}
