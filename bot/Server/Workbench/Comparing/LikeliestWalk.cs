using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Server.Workbench.Comparing;

/// <summary>The walk that a fault leads to when every check shows what it most likely shows under that fault.</summary>
internal static class LikeliestWalk
{
    private const int MostSteps = 60;

    /// <summary>The steps, for example <c>fan-plug: home</c> and <c>replace-fan-motor</c>.</summary>
    /// <param name="fault">A fault of the problem.</param>
    public static ImmutableArray<string> Of(SequencingProblem problem, FaultId fault, IPolicy policy)
    {
        var steps = ImmutableArray.CreateBuilder<string>();
        Position here = problem.Begin();
        while (steps.Count < MostSteps)
        {
            switch (policy.Next(problem, here))
            {
                case PlannedStep.DoCheck step:
                    OutcomeId seen = Likeliest(problem.Checks.First(check => check.Id == step.Check), fault);
                    steps.Add($"{step.Check}: {seen}");
                    here = here.Saw(step.Check, seen, step.Access);
                    break;
                case PlannedStep.DoRepair step:
                    steps.Add(step.Repair.ToString());
                    if (problem.Repairs.First(repair => repair.Id == step.Repair).Fixes.Contains(fault))
                        return steps.ToImmutable();
                    here = here.Failed(step.Repair, step.Access);
                    break;
                default:
                    return steps.ToImmutable();
            }
        }

        return steps.ToImmutable();
    }

    // Of outcomes that are as likely, the first of the page.
    private static OutcomeId Likeliest(Check check, FaultId fault)
    {
        ImmutableArray<double> row = check.Row(fault);
        int best = 0;
        for (int place = 1; place < row.Length; place++) if (row[place] > row[best]) best = place;
        return check.Outcomes[best];
    }
}
