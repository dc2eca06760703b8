using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.Planning;

/// <summary>Two faults, one perfect check of 30 minutes, two repairs of 10. Worked by hand.</summary>
public sealed class WrongPartTests
{
    // Repair first: 10 + 0.5 · 10 = 15 without a price, 15 + 0.5 · wrong with one. Check first: 30 + 10 = 40.
    [Theory]
    [InlineData(0, 15, false)]
    [InlineData(40, 35, false)]
    [InlineData(60, 40, true)]
    public void Plan_PartPriced_ChecksOnceGuessingCostsMore(double wrong, double minutes, bool checksFirst)
    {
        SequencingProblem problem = Problem(wrong);
        foreach (IPlanner planner in new IPlanner[] { new ExactPlanner(), new LivePlanner() })
        {
            Plan plan = planner.Plan(problem, problem.Begin());
            Assert.Equal(minutes, plan.Minutes, 1e-9);
            Assert.Equal(checksFirst, plan.Step is PlannedStep.DoCheck);
            Assert.Equal(minutes, new PolicyEvaluator(problem, planner).Minutes(problem.Begin()), 1e-9);
        }
    }

    private static SequencingProblem Problem(double wrong)
    {
        FaultId board = new("board"), motor = new("motor");
        AccessId any = Parts.Any;
        Check check = new(new CheckId("look"), 30, [any], Role.Anyone, [new OutcomeId("good"), new OutcomeId("bad")],
            ImmutableSortedDictionary<FaultId, ImmutableArray<double>>.Empty.Add(motor, [0, 1]), [1, 0]);
        Repair Change(FaultId fault) =>
            new(new RepairId(fault.Value), 10, 0, [any], Role.Anyone, [fault]) { WrongMinutes = wrong };
        return new SequencingProblem(
            Objective.Repair, [new Fault(board, 0.5), new Fault(motor, 0.5)], [check], [Change(board), Change(motor)],
            new AccessStates([new AccessState(any, Role.Anyone)], [], any));
    }
}
