using System.Collections.Immutable;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>
/// Ice that is looked at twice counts once, and what clears it is not taken for done before a forced defrost showed it.
/// </summary>
public sealed class SameIceTests
{
    private static readonly FaultId Defrost = new("defrost-failing");

    private static Library Library => ShippedContent.Library;

    [Theory]
    [InlineData("cold-draught")]
    [InlineData("low-pressure-code")]
    [InlineData("noise-outdoor")]
    [InlineData("poor-heating")]
    public void Ice_WhereBothLooksCouldBeAsked_IsLookedAtOnce(string symptom)
    {
        CaseView view = new(Library,
            new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", symptom).State
                with { Mode = "heating" });
        Assert.True(view.IsFor(Library.Checks[new("outdoor-frost")]));
        Assert.False(view.IsFor(Library.Checks[new("snow-look")]));
    }

    [Fact]
    public void Ice_ToldTwice_CountsAsItWasToldLast()
    {
        CaseState begun = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "poor-heating").State;
        Assert.Equal(ShareAfter(begun, ("snow-look", "ice")),
            ShareAfter(begun, ("outdoor-frost", "thick"), ("snow-look", "ice")), 1e-12);
        Assert.Equal(ShareAfter(begun, ("outdoor-frost", "thick")),
            ShareAfter(begun, ("snow-look", "ice"), ("outdoor-frost", "thick")), 1e-12);
    }

    // "It does not heat now" says nothing of the ice.
    [Theory]
    [InlineData("not-heating", true)]
    [InlineData("thick", false)]
    public void Look_ThatToldNothing_LeavesTheOtherToBeDone(string seen, bool isAsked)
    {
        CaseState begun =
            new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "outdoor-fan-code").State;
        Assert.Equal(isAsked,
            new CaseView(Library, begun with { Results = [Result("outdoor-frost", seen)] }).IsFor(
                Library.Checks[new("snow-look")]));
    }

    [Theory]
    [InlineData("technician")]
    [InlineData("refrigerant")]
    public void Repair_OfADefrostThatFails_WaitsForAForcedDefrost(string role)
    {
        WalkRecord walk = HiddenFault.Typical(Defrost.Value)
            .Walk(new Walker(ShippedContent.Assistant).Begin("brenholt-ws", role, "poor-heating"));
        Assert.InRange(walk.Steps.IndexOf("forced-defrost"), 0, walk.Steps.IndexOf("restore-defrost"));
    }

    // Ice after the trial's forced defrost is what the page calls the proof: it does not rule the fault out.
    [Fact]
    public void Trial_ThatStillLeavesIce_LeavesTheFaultInQuestion()
    {
        CaseState begun = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "poor-heating").State;
        CaseState tried = begun
            with { Results = [Result("outdoor-frost", "thick")],
                Repairs = [new TriedRepair("restore-defrost", Defrost.Value, false)] };
        Assert.True(new CaseView(Library, tried).Belief.Ranked.Single(ranked => ranked.Id == Defrost).Probability > 0);
        Assert.Contains(new CheckId("forced-defrost"), Library.Repairs[new RepairId("restore-defrost")].Changes);
    }

    private static double ShareAfter(CaseState begun, params (string Check, string Seen)[] told) => new CaseView(
            Library, begun with { Results = [.. told.Select(one => Result(one.Check, one.Seen))] })
        .Belief.Ranked.Single(ranked => ranked.Id == Defrost).Probability;

    private static SeenResult Result(string check, string seen)
    {
        ImmutableArray<OutcomeId> outcomes = Library.Graph.Find(new CheckId(check))!.Outcomes;
        return new SeenResult(check, seen, [.. outcomes.Select(outcome => outcome.Value == seen ? 1.0 : 0)], null, seen,
            []);
    }
}
