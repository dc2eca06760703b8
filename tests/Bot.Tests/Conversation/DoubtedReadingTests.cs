using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>Readings that say more, or less, than their figure.</summary>
public sealed class DoubtedReadingTests
{
    // A minus on direct volts: the two cores are crossed, or the leads; common practice, no source.
    [Theory]
    [InlineData("-12 V")]
    [InlineData("-12.1 VDC")]
    [InlineData("minus 12 volts")]
    public void ControllerSupply_WithAMinusSign_SpeaksForCrossedCores(string said)
    {
        Walker walker = At("ostvik-lc", "controller-no-link", "controller-voltage", "closed-running");
        walker.Say(said);
        Assert.Contains(walker.State.Results, result => result is { Check: "controller-voltage", Outcome: "crossed" });
        Assert.InRange(Share("wired-controller-link", walker.State), 0.7, 1);
    }

    // The remote control tells nothing of a wired controller without a link; common practice, no source.
    [Theory]
    [InlineData("ostvik-lc")]
    [InlineData("veldarn-nord")]
    public void ControllerSupply_WithAMinusSign_IsNotFollowedByTheRemoteControl(string series)
    {
        string[] ofTheRemote = ["remote-batteries", "remote-camera", "receiver-shade"];
        Walker walker = At(series, "controller-no-link", "controller-voltage", "closed-running");
        walker.Say("-12 V");
        for (int step = 0; step < 6 && walker.Question.Kind == QuestionKind.Check; step++)
        {
            Assert.DoesNotContain(walker.Question.Subject, ofTheRemote);
            walker.Order(CommandWord.Skip);
        }
    }

    [Theory]
    [InlineData("42 bar, 40 °F")]
    [InlineData("42 bar and 4 °C")]
    public void HighSide_ThatNoUnitReachesInSuchAir_IsAskedBack(string said)
    {
        Walker walker = At("brenholt-ws", "high-pressure-code", "high-side-pressure", "gauges-on", "cooling");
        Reply reply = walker.Say(said);
        Assert.DoesNotContain(walker.State.Results, result => result.Check == "high-side-pressure");
        Assert.Contains(reply.Segments, segment =>
            segment.From.Contains(new Provenance.Phrase("pattern-too-far-apart")));
        Assert.Equal("high-side-pressure", walker.Question.Subject);
    }

    [Fact]
    public void HighSide_InHotAir_IsTaken()
    {
        Walker walker = At("brenholt-ws", "high-pressure-code", "high-side-pressure", "gauges-on", "cooling");
        walker.Say("42 bar, 40 °C");
        Assert.Contains(walker.State.Results, result => result is { Check: "high-side-pressure", Outcome: "high" });
    }

    // Liquid refrigerant in a cold shell lowers the reading; common practice, no source.
    [Fact]
    public void Compressor_LowToAColdShell_IsWarmedAndMeasuredAgainBeforeItIsChanged()
    {
        WalkRecord walk = HiddenFault.Typical("compressor-grounded")
            .Walk(new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "refrigerant", "trips-breaker"));
        Assert.InRange(walk.Steps.IndexOf("compressor-insulation-warm"), 1, walk.Steps.IndexOf("replace-compressor"));
        Assert.True(walk.Steps.IndexOf("compressor-insulation") < walk.Steps.IndexOf("compressor-insulation-warm"));
    }

    private static double Share(string fault, CaseState state) =>
        new CaseView(ShippedContent.Library,
            state).Belief.Ranked.Single(ranked => ranked.Id == new FaultId(fault)).Probability;

    private static Walker At(string series, string symptom, string check, string access, string? mode = null)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin(series, "refrigerant", symptom);
        if (mode is not null) walker.Note(new ModeStated(mode));
        walker.Note(new AccessReached(access), new StepChosen(StepKind.Check, check, access));
        walker.Order(CommandWord.Again);
        Assert.Equal(check, walker.Question.Subject);
        return walker;
    }
}
