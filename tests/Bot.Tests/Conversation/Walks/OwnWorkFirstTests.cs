using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Walks;

namespace DxAssistant.Bot.Tests.Conversation.Walks;

/// <summary>
/// Before a case is left to others, what this person can put right without a part. Common practice, no source: nobody is
/// sent out for a filter that nobody washed.
/// </summary>
public sealed class OwnWorkFirstTests
{
    private static readonly AccessId Closed = new("closed-running");
    private static readonly PlannedStep Visit = new PlannedStep.DoRepair(RepairId.HandOver, Closed);
    private static readonly PlannedStep Watch = Repair("watch-and-record");
    private static readonly PlannedStep Wash = Repair("wash-filter");
    private static readonly PlannedStep Fan = Repair("replace-indoor-fan-motor");

    [Fact]
    public void Visit_RepairWithoutAPartIsLeft_ComesFirst()
    {
        LaidStep laid = Laid(Visit, (Visit, 200), (Fan, 201), (Wash, 210));
        Assert.Equal((Wash, Visit), (laid.Step, laid.By(LaidRule.OwnWork)!.From));
    }

    [Fact]
    public void Visit_RepairTakesLongerThanTheRuleMayCost_IsBooked()
    {
        LaidStep laid = Laid(Visit, (Visit, 200), (Wash, 231));
        Assert.Null(laid.By(LaidRule.OwnWork));
        Assert.Contains(LaidRule.OwnWork, laid.HeldBack);
    }

    [Fact]
    public void Visit_RepairCuresNothingThatIsInQuestion_IsBooked() =>
        Assert.Null(Laid(Visit, (Visit, 200), (Repair("clear-snow"), 201)).By(LaidRule.OwnWork));

    // Common practice, no source: a unit on which all reads as it should is left as it is.
    [Fact]
    public void Watching_IsNotPutOff() =>
        Assert.Null(Laid(Watch, (Watch, 200), (Wash, 201)).By(LaidRule.OwnWork));

    [Fact]
    public void Check_IsNoVisit() => Assert.Null(Laid(
        new PlannedStep.DoCheck(new CheckId("filter-look"), Closed),
        (new PlannedStep.DoCheck(new CheckId("filter-look"), Closed), 200), (Wash, 201)).By(LaidRule.OwnWork));

    private static PlannedStep.DoRepair Repair(string id) => new PlannedStep.DoRepair(new RepairId(id), Closed);

    private static LaidStep Laid(PlannedStep step, params (PlannedStep Step, double Minutes)[] options) =>
        new WalkChooser(ShippedContent.Library).Laid(
            Scenes.Of(Scenes.FanCode().State, Scenes.Plan(options)), step, []);
}
