using System.Collections.Immutable;
using DxAssistant.Server.Simulating.Sources;

namespace DxAssistant.Server.Simulating;

/// <summary>The sources of readings, by the calculation they feed.</summary>
internal static class ReadingSources
{
    public static ImmutableSortedDictionary<string, IReadingSource> All { get; } = new IReadingSource[]
    {
        new BandSource(), new CapacitorSource(), new ContinuitySource(), new DcBusSource(), new InsulationSource(),
        new ModuleDiodesSource(), new PolarBandSource(), new SignalSwingSource(), new SplitSupplySource(),
        new SupplyLimitsSource(),
        new TemperatureSplitSource(), new ThermistorSource(), new VoltageUnbalanceSource(), new WindingBalanceSource(),
    }.Concat(RefrigerantLineSource.All).Concat(DirectedSplitSource.All)
    .ToImmutableSortedDictionary(source => source.Calculation, source => source, StringComparer.Ordinal);
}
