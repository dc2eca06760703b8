using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Planning.Baselines;

namespace DxAssistant.Graph.Tests.Planning.Baselines;

public sealed class BaselineTests
{
    public static TheoryData<string> Names =>
        ["fixedOrder", "cheapestFirst", "infoGainPerCost", "repairOnly", "ecoMyopic", "rollout"];

    // Source: tests/Reference/sequencing.json, "baselines", reckoned by an independent program.
    [Theory]
    [MemberData(nameof(Names))]
    public void Next_EveryReferenceInstance_CostsWhatTheFileSays(string name)
    {
        foreach (SequencingInstance instance in SequencingFile.Instances)
        {
            if (instance.Baselines[name] is not { } expected) continue;
            double minutes = new PolicyEvaluator(instance.Problem, Policy(name)).Minutes(instance.Problem.Begin());
            Assert.True(Math.Abs(expected - minutes) < 1e-9, $"{instance.Id}: expected {expected}, not {minutes}");
        }
    }

    [Fact]
    public void EcoMyopic_ProblemWithoutRepairs_Throws()
    {
        SequencingProblem problem = SequencingFile.Instance("thm-half-split-chain").Problem;
        Assert.Throws<ArgumentException>(() => new EcoMyopic().Next(problem, problem.Begin()));
    }

    private static IPolicy Policy(string name) => name switch
    {
        "fixedOrder" => new FixedOrder(),
        "cheapestFirst" => new CheapestFirst(),
        "infoGainPerCost" => new InfoGainPerCost(),
        "repairOnly" => new RepairOnly(),
        "ecoMyopic" => new EcoMyopic(),
        _ => new Rollout(),
    };
}
