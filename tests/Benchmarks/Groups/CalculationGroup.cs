using System.Collections.Immutable;
using DxAssistant.Benchmarks.Ratios;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Tests.Calculations;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>Each named calculation on its first published case: checking of inputs, formula, derivation.</summary>
internal sealed class CalculationGroup : RatioGroup
{
    public override string Name => "calculations";

    protected override string Title => "Cost of each calculation";

    protected override Workload Baseline => new("one exponential function, boxed", () => Math.Exp(_exponent));

    protected override ImmutableArray<Workload> Workloads =>
        [.. CalculationCatalogue.All.Keys.Select(name => OnFirstCase(name))];

    private double _exponent = 1.2345;

    private static Workload OnFirstCase(string name)
    {
        var request = CheckCase.All.Values.Select(item => item.Request).First(request =>
            CalculationCatalogue.Find(request)?.Name == name
                && CalculationCatalogue.Run(request) is CalculationResult.Answer);
        var calculation = CalculationCatalogue.All[name];
        return new Workload(name, () => calculation.Run(request.Inputs));
    }
}
