using System.Globalization;
using DxAssistant.Graph.Planning;
using Xunit.Abstractions;

namespace DxAssistant.Graph.Tests.Planning.Fresh;

/// <summary>
/// Other problems than those of tests/Reference/sequencing.json, of the same kinds. <c>DX_FRESH=200</c> in the
/// environment plays so many of each kind, and names the worst.
/// </summary>
public sealed class FreshInstanceTests(ITestOutputHelper output)
{
    private static readonly int Count =
        int.TryParse(Environment.GetEnvironmentVariable("DX_FRESH"), CultureInfo.InvariantCulture, out int asked)
            ? asked
            : 8;

    // Own bars: mean and worst ratio of the live policy's exact cost to the optimum.
    [Theory]
    [InlineData("perfect", 1.001, 1.02)]
    [InlineData("noisy", 1.001, 1.02)]
    [InlineData("access", 1.001, 1.02)]
    [InlineData("large", 1.001, 1.02)]
    [InlineData("decoy", 1.01, 1.05)]
    [InlineData("tryfirst", 1.01, 1.05)]
    [InlineData("openonce", 1.01, 1.05)]
    [InlineData("weakcheap", 1.01, 1.05)]
    [InlineData("flipflop", 1.01, 1.05)]
    [InlineData("isolate", 1.01, 1.05)]
    [InlineData("pair", 1.01, 1.05)]
    [InlineData("eco", 1.01, 1.05)]
    [InlineData("rollout", 1.01, 1.05)]
    public void LivePlanner_FreshProblems_StaysNearTheOptimum(string kind, double meanBar, double worstBar)
    {
        List<double> ratios = [];
        for (int seed = 1; seed <= Count; seed++)
        {
            if (Make(kind, seed) is not { } problem) continue;
            Plan exact = new ExactPlanner().Plan(problem, problem.Begin());
            Assert.True(exact.IsExact, $"{kind} seed {seed}: not exact");
            ratios.Add(new PolicyEvaluator(problem, new LivePlanner()).Minutes(problem.Begin()) / exact.Minutes);
            if (ratios[^1] > 1.002)
                output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"seed {seed} {ratios[^1]:0.00000}"));
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{kind}: {ratios.Count} problems, mean {ratios.Average():0.00000}, worst {ratios.Max():0.00000}"));
        Assert.InRange(ratios.Average(), 1 - 1e-9, meanBar);
        Assert.InRange(ratios.Max(), 1 - 1e-9, worstBar);
    }

    private static SequencingProblem? Make(string kind, int seed) => kind switch
    {
        "perfect" => RandomKinds.Perfect(seed),
        "noisy" => RandomKinds.Noisy(seed),
        "access" => RandomKinds.Access(seed),
        "large" => RandomKinds.Large(seed),
        "decoy" => BuiltTraps.Decoy(seed),
        "tryfirst" => BuiltTraps.TryFirst(seed),
        "openonce" => BuiltTraps.OpenOnce(seed),
        "weakcheap" => BuiltTraps.WeakCheap(seed),
        "flipflop" => BuiltTraps.FlipFlop(seed),
        "isolate" => SearchedTraps.Isolate(seed),
        "pair" => SearchedTraps.Pair(seed),
        "eco" => SearchedTraps.Eco(seed),
        _ => SearchedTraps.Rollout(seed),
    };
}
