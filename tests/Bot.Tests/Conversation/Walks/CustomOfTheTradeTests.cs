using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Walks;

namespace DxAssistant.Bot.Tests.Conversation.Walks;

/// <summary>What a page names in <c>after</c> goes first, where it lies on the way.</summary>
public sealed class CustomOfTheTradeTests
{
    private static readonly AccessId Isolated = new("isolated-open");
    private static readonly PlannedStep Windings = new PlannedStep.DoCheck(new CheckId("fan-windings"), Isolated);

    [Fact]
    public void Instead_WindingsOfAFan_IsItsPlug() =>
        Assert.Equal(new PlannedStep.DoCheck(new CheckId("fan-plug"), Isolated),
            First(Scenes.FanCode().State, Windings));

    [Fact]
    public void Instead_PlugSeenAlready_IsNothing()
    {
        Check plug = ShippedContent.Library.Graph.Find(new CheckId("fan-plug"))!;
        CaseState seen = Fold.Apply(Scenes.FanCode().State, [new OutcomeSeen(
            "fan-plug", plug.Outcomes[0].Value, [.. plug.Outcomes.Select((_, place) => place == 0 ? 1.0 : 0.0)], null,
            "")]);
        Assert.Null(First(seen, Windings));
    }

    [Fact]
    public void Instead_ARepair_IsNothing() =>
        Assert.Null(First(Scenes.FanCode().State,
            new PlannedStep.DoRepair(new RepairId("replace-indoor-fan-motor"), Isolated)));

    // The plug is looked at with the unit isolated: on the way from closed to open and running it is no detour only if
    // that way leads through the isolated state.
    [Fact]
    public void Instead_WhateverTheStep_CostsNoMinuteOfDetour()
    {
        WalkScene scene = Scenes.Of(Scenes.FanCode().State);
        foreach (Check check in scene.Problem.Checks)
            foreach (AccessId access in check.Access)
                foreach (PlannedStep.DoCheck first in Custom.Instead(scene, new PlannedStep.DoCheck(check.Id, access))
                    .Cast<PlannedStep.DoCheck>())
                    Assert.Equal(
                        scene.Problem.Access.Minutes(scene.Here, access),
                        scene.Problem.Access.Minutes(scene.Here, first.Access)
                            + scene.Problem.Access.Minutes(first.Access, access), 1e-9);
    }

    private static CustomOfTheTrade Custom => new(ShippedContent.Library);

    private static PlannedStep? First(CaseState state, PlannedStep step) =>
        Custom.Instead(Scenes.Of(state), step).FirstOrDefault();
}
