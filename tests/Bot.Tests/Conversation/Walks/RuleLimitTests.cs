using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Walks;

namespace DxAssistant.Bot.Tests.Conversation.Walks;

/// <summary>No rule over the plan costs more than the pages allow it.</summary>
public sealed class RuleLimitTests
{
    private static readonly AccessId Isolated = new("isolated-open");

    private static Library Shipped => ShippedContent.Library;

    // The proof of a fan motor: its windings, which come after its plug.
    [Theory]
    [InlineData(45, true)]
    [InlineData(0, false)]
    public void Proof_CostsMoreThanItMay_ThePartIsChangedWithout(double minutes, bool isAsked)
    {
        Library strict = With("proof before part", new RuleLimit(minutes, 0));
        WalkScene scene = Scenes.Of(Scenes.FanCode().State, Scenes.Plan((Motor, 100)));
        LaidStep laid = new WalkChooser(strict).Laid(scene, Motor, []);
        Assert.Equal(isAsked, laid.By(LaidRule.Proof) is not null);
        Assert.Equal(!isAsked, laid.HeldBack.Contains(LaidRule.Proof));
    }

    // Common practice, no source: a board or a compressor is changed last, and never on a guess.
    [Fact]
    public void Proof_OfADearPart_IsDoneWhateverItCosts()
    {
        PlannedStep board = new PlannedStep.DoRepair(new RepairId("replace-indoor-board"), Isolated);
        WalkScene scene = Scenes.Of(Scenes.FanCode().State, Scenes.Plan((board, 100)));
        LaidStep laid = new WalkChooser(With("proof before part", new RuleLimit(0, 0))).Laid(scene, board, []);
        Assert.NotNull(laid.By(LaidRule.Proof));
    }

    [Fact]
    public void Proof_DearestParts_AreNeverChangedWithout() =>
        Assert.All(
            (string[])["replace-compressor", "replace-inverter-board", "replace-outdoor-board", "replace-indoor-board"],
            repair => Assert.True(Shipped.Repairs[new RepairId(repair)].ProofAlways));

    [Theory]
    [InlineData(10, true)]
    [InlineData(0.5, false)]
    public void Custom_CostsMoreThanItMay_IsLeftOut(double minutes, bool isAsked)
    {
        PlannedStep windings = new PlannedStep.DoCheck(new CheckId("fan-windings"), Isolated);
        WalkScene scene = Scenes.Of(Scenes.FanCode().State, Scenes.Plan((windings, 100)));
        LaidStep laid =
            new WalkChooser(With("custom of the trade", new RuleLimit(minutes, 0))).Laid(scene, windings, []);
        Assert.Equal(isAsked, laid.By(LaidRule.Custom) is not null);
    }

    // Along walks of all symptoms, whatever the answers.
    [Fact]
    public void Choose_ShippedWalks_EachMoveKeepsToItsLimit()
    {
        int seed = 20261126;
        var random = new Random(seed);
        foreach (SymptomId symptom in Shipped.Symptoms.Keys.Where((_, place) => place % 7 == 0))
        {
            ImmutableArray<LaidStep> walk = RandomWalk.Of(Shipped, symptom, random, work: 20_000, steps: 6);
            foreach (LaidStep step in walk)
                foreach (LaidMove move in step.Moves)
                    Assert.True(move.Minutes <= Shipped.Settings.LimitOf(move.Rule)
                        .Of(step.Plan.Minutes), $"{symptom}: {move} (seed {seed})");
        }
    }

    private static PlannedStep Motor => new PlannedStep.DoRepair(new RepairId("replace-indoor-fan-motor"), Isolated);

    private static Library With(string rule, RuleLimit limit) =>
        Shipped with { Settings = Shipped.Settings with { Limits = Shipped.Settings.Limits.SetItem(rule, limit) } };
}
