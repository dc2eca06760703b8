using DxAssistant.Conversation;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;

namespace DxAssistant.Bot.Tests.Conversation.Deciding;

/// <summary>What a page names in <c>after</c> goes first, where it lies on the way.</summary>
public sealed class CustomOfTheTradeTests
{
    private static readonly StepChosen Windings = new(StepKind.Check, "fan-windings", "isolated-open");

    [Fact]
    public void Before_WindingsOfAFan_IsItsPlug() =>
        Assert.Equal(new StepChosen(StepKind.Check, "fan-plug", "isolated-open"), Before(FanCode(), Windings));

    [Fact]
    public void Before_PlugSeenAlready_IsNothing()
    {
        Check plug = ShippedContent.Library.Graph.Find(new CheckId("fan-plug"))!;
        CaseState seen = Fold.Apply(FanCode(), [new OutcomeSeen(
            "fan-plug", plug.Outcomes[0].Value, [.. plug.Outcomes.Select((_, place) => place == 0 ? 1.0 : 0.0)], null, "")]);
        Assert.Null(Before(seen, Windings));
    }

    [Fact]
    public void Before_ARepair_IsNothing() =>
        Assert.Null(Before(FanCode(), new StepChosen(StepKind.Repair, "replace-indoor-fan-motor", "isolated-open")));

    // The plug is looked at with the unit isolated: on the way from closed to open and running it is no detour only if that
    // way leads through the isolated state.
    [Fact]
    public void Before_WhateverTheStep_CostsNoMinuteOfDetour()
    {
        CaseView view = new(ShippedContent.Library, FanCode());
        foreach (Check check in ShippedContent.Library.Graph.Checks)
            foreach (AccessId access in check.Access.Where(view.OpenAccess.Contains))
                if (Before(view.State, new StepChosen(StepKind.Check, check.Id.Value, access.Value)) is { } first)
                    Assert.Equal(
                        view.OpenAccess.Minutes(view.Access, access),
                        view.OpenAccess.Minutes(view.Access, new AccessId(first.Access)) + view.OpenAccess.Minutes(new AccessId(first.Access), access),
                        1e-9);
    }

    private static CaseState FanCode() =>
        new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "indoor-fan-fault").State;

    private static StepChosen? Before(CaseState state, StepChosen step) =>
        new CustomOfTheTrade(ShippedContent.Library).Before(new CaseView(ShippedContent.Library, state), step);
}
