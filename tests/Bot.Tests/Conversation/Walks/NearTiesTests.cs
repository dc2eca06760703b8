using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Walks;

namespace DxAssistant.Bot.Tests.Conversation.Walks;

/// <summary>Between plans nobody can tell apart, the step least in the way; outside of that, the plan's own.</summary>
public sealed class NearTiesTests
{
    private static readonly AccessId Closed = new("closed-running"), Isolated = new("isolated-open");
    private static readonly PlannedStep Far = new PlannedStep.DoCheck(new CheckId("fan-plug"), Isolated);
    private static readonly PlannedStep Near = new PlannedStep.DoCheck(new CheckId("fan-sound"), Closed);
    private static readonly PlannedStep Repair =
        new PlannedStep.DoRepair(new RepairId("replace-indoor-fan-motor"), Isolated);

    // A minute, or one in a hundred when that is more.
    [Theory]
    [InlineData(50, 50.9, true)]
    [InlineData(50, 51.1, false)]
    [InlineData(200, 201.9, true)]
    [InlineData(200, 202.1, false)]
    public void Best_TwoChecks_TakesTheNearerWithinTheMargin(double best, double next, bool near) =>
        Assert.Equal(near ? Near : Far, Best((Far, best), (Near, next)));

    // Two minutes to look at a filter, of which the plan earns back nearly none: it would tell nothing.
    [Fact]
    public void Best_CheckThatEarnsLessThanHalfItsMinutes_IsNotAsked() =>
        Assert.Equal(Far, Best((Far, 200), (new PlannedStep.DoCheck(new CheckId("filter-look"), Closed), 201.9)));

    [Fact]
    public void Best_PlanRepairs_NoCheckTakesItsPlace() => Assert.Equal(Repair, Best((Repair, 50), (Near, 50.1)));

    [Fact]
    public void Best_RepairWithinTheMargin_DoesNotTakeThePlaceOfACheck() =>
        Assert.Equal(Far, Best((Far, 50), (Repair, 50.1)));

    [Fact]
    public void Best_SameWay_LooksBeforeMeasuring()
    {
        PlannedStep measured = new PlannedStep.DoCheck(new CheckId("fan-windings"), Isolated);
        Assert.Equal(Far, Best((measured, 50), (Far, 50.5)));
    }

    [Fact]
    public void Best_NothingToChooseBetween_KeepsThePlansOrder()
    {
        PlannedStep other = new PlannedStep.DoCheck(new CheckId("coil-look"), Closed);
        Assert.Equal(other, Best((other, 50), (Near, 50.1)));
    }

    // The wheel is stuck and the plug home: the fuse is whole, as 98 in 100 times, and the fan is freed next.
    [Fact]
    public void Best_AnswerAllButKnown_TheRepairWithoutPartsGoesFirst()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "indoor-fan-fault");
        walker.Tap("clean");
        walker.MakeSafe().Tap("stuck");
        PlannedStep fuse = new PlannedStep.DoCheck(new CheckId("board-fuse"), Isolated), free =
            new PlannedStep.DoRepair(new RepairId("free-indoor-fan"), Isolated);
        Assert.Equal(free, Best(walker, (fuse, 70), (free, 72)));
        Assert.Equal(fuse, Best(walker, (fuse, 70), (free, 74)));
        Assert.Equal(fuse, Best(walker, (fuse, 70), (Repair, 72)));
    }

    private static PlannedStep Best(params (PlannedStep Step, double Minutes)[] options) =>
        Best(Scenes.FanCode(), options);

    private static PlannedStep Best(Walker walker, params (PlannedStep Step, double Minutes)[] options)
    {
        WalkScene scene = Scenes.Of(walker.State, Scenes.Plan(options));
        LaidStep laid = new WalkChooser(ShippedContent.Library).Laid(scene, options[0].Step, []);
        return (laid.By(LaidRule.Foregone) ?? laid.By(LaidRule.NearTie))?.To ?? options[0].Step;
    }
}
