using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Judging;

/// <summary>All judges.</summary>
public static class JudgeCatalogue
{
    /// <summary>Every judge, by the name a check page gives, in ordinal order.</summary>
    public static ImmutableSortedDictionary<string, IJudge> All { get; } = new IJudge[]
    {
        new BandJudge(), new CapacitorJudge(), new ContinuityJudge(), new DcBusJudge(), new InsulationJudge(),
        new InsulationCorrectedJudge(),
        new ModuleDiodesJudge(), new PolarBandJudge(),
        new SignalSwingJudge(), new SplitSupplyJudge(), new SupplyLimitsJudge(), new TemperatureSplitJudge(),
        new ThermistorCurveJudge(),
        new VoltageUnbalanceJudge(), new WindingBalanceJudge(),
    }.Concat(RefrigerantLineJudge.All.CastArray<IJudge>()).Concat(DirectedSplitJudge.All.CastArray<IJudge>())
        .ToImmutableSortedDictionary(judge => judge.Name, judge => judge, StringComparer.Ordinal);
}
