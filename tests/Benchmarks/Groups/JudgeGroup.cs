using System.Collections.Immutable;
using DxAssistant.Benchmarks.Ratios;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Tests.Judging;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>Each judge on readings of a healthy unit: expectation, uncertainty, probability, derivation.</summary>
internal sealed class JudgeGroup : RatioGroup
{
    private double _exponent = 1.2345;

    public override string Name => "judges";

    protected override string Title => "Cost of each verdict";

    protected override Workload Baseline => new("one exponential function, boxed", () => Math.Exp(_exponent));

    protected override ImmutableArray<Workload> Workloads => [.. JudgeCatalogue.All.Select(pair =>
    {
        var request = GoodRequests.Of(pair.Key);
        return new Workload(pair.Key, () => pair.Value.Judge(request));
    })];
}
