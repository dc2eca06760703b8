using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.Planning;

public sealed class RememberedTests
{
    private static readonly Role Owner = new("owner", 0);
    private static readonly Role Technician = new("technician", 2);
    private static readonly AccessId Closed = new("closed");
    private static readonly AccessId Open = new("open");

    private readonly CountingPlanner planner = new();
    private readonly FaultGraph graph = CaseProblemTests.Graph();

    [Fact]
    public void Plan_SameCaseAgain_IsNotMadeAgain()
    {
        Remembered<StepKey, Plan> plans = new(most: 100);
        Plan? first = Plan(plans, graph.Believe([]), new Situation(Technician, Closed));
        Plan? again = Plan(plans, graph.Believe([]), new Situation(Technician, Closed));
        Assert.Same(first, again);
        Assert.Equal(1, planner.Made);
    }

    [Fact]
    public void Plan_AnythingThatCountsIsOther_IsThePlanMadeAnew()
    {
        Remembered<StepKey, Plan> plans = new(most: 100);
        foreach ((Belief belief, Situation situation) in Cases())
        {
            Plan? fresh = CaseProblem.From(graph, belief, situation).Problem is { } problem
                ? new LivePlanner().Plan(problem, problem.Begin())
                : null;
            Plan? known = Plan(plans, belief, situation);
            Assert.Equal(fresh?.Step, known?.Step);
            Assert.Equal(fresh?.Minutes, known?.Minutes);
            Assert.Equal(fresh?.Options.ToArray(), known?.Options.ToArray());
        }
    }

    [Fact]
    public void Plan_CasesThatDiffer_AreToldApart()
    {
        Remembered<StepKey, Plan> plans = new(most: 100);
        int needed = Cases().Count(each => CaseProblem.From(graph, each.Belief, each.Situation).Problem is not null);
        foreach ((Belief belief, Situation situation) in Cases()) Plan(plans, belief, situation);
        Assert.Equal(needed, planner.Made);
    }

    [Fact]
    public void Plan_NothingLeftInQuestion_IsNullAlsoTheSecondTime()
    {
        Remembered<StepKey, Plan> plans = new(most: 100);
        Belief nothing = graph.Believe(
            [new Evidence.RepairFailed(new RepairId("clean")), new Evidence.RepairFailed(new RepairId("swap"))]);
        Assert.Null(Plan(plans, nothing, new Situation(Technician, Closed)));
        Assert.Null(Plan(plans, nothing, new Situation(Technician, Closed)));
    }

    [Fact]
    public void Plan_MoreThanAreKept_ForgetsTheOneNotAskedForLongest()
    {
        Remembered<StepKey, Plan> plans = new(most: 2);
        Belief belief = graph.Believe([]);
        Situation first = new(Technician, Closed), second = new(Technician, Open), third = new(Owner, Closed);
        foreach (Situation each in new[] { first, second, first, third, first }) Plan(plans, belief, each);
        Assert.Equal(3, planner.Made);
        Plan(plans, belief, second);
        Assert.Equal(4, planner.Made);
    }

    [Fact]
    public void Of_OtherStatesToBeginIn_AreToldApart() => Assert.NotEqual(
        StepKey.Of(graph.Believe([]), new Situation(Technician, Closed), []),
        StepKey.Of(graph.Believe([]), new Situation(Technician, Closed), [Open]));

    private Plan? Plan(Remembered<StepKey, Plan> plans, Belief belief, Situation situation) =>
        plans.Of(StepKey.Of(belief, situation, []),
            () => CaseProblem.From(graph, belief, situation).Problem is { } problem
                ? planner.Plan(problem, problem.Begin())
                : null);

    // Each differs from the first in one thing.
    private IEnumerable<(Belief Belief, Situation Situation)> Cases()
    {
        Belief belief = graph.Believe([]);
        Situation situation = new(Technician, Closed);
        yield return (belief, situation);
        yield return (belief, situation with { Who = Owner });
        yield return (belief, situation with { Access = Open });
        yield return (belief, situation with { Objective = Objective.Isolate });
        yield return (belief, situation with { HandOverMinutes = 10 });
        yield return (belief, situation with { BarredChecks = [new CheckId("meter")] });
        yield return (belief, situation with { BarredRepairs = [new RepairId("swap")] });
        yield return (belief, situation with { RefusedAccess = [Open] });
        yield return (graph.Believe([Evidence.Seen(graph.Find(new CheckId("look"))!, new OutcomeId("pass"))]),
            situation);
        yield return (graph.Believe([new Evidence.RepairFailed(new RepairId("clean"))]), situation);
    }

    private sealed class CountingPlanner : IPlanner
    {
        private readonly LivePlanner live = new();

        public int Made { get; private set; }

        public Plan Plan(SequencingProblem problem, Position position)
        {
            Made++;
            return live.Plan(problem, position);
        }

        public PlannedStep Next(SequencingProblem problem, Position position) => Plan(problem, position).Step;
    }
}
