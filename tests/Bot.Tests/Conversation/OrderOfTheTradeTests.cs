using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>What a technician does first, and what nobody does any more. Common practice, no source.</summary>
public sealed class OrderOfTheTradeTests
{
    [Theory]
    [InlineData("poor-cooling", "temperature-split-heating")]
    [InlineData("poor-heating", "temperature-split")]
    public void CrossedZones_AreFoundByOneZoneAlone(string symptom, string ofTheOtherMode)
    {
        WalkRecord walk = HiddenFault.Typical("zones-crossed")
            .Walk(new Walker(ShippedContent.Assistant).Begin("tarn-duo", "technician", symptom));
        Assert.InRange(walk.Steps.IndexOf("one-zone-alone"), 0, walk.Steps.IndexOf("uncross-zones"));
        Assert.DoesNotContain(ofTheOtherMode, walk.Steps);
    }

    // In heating the outdoor coil evaporates: low pressure is looked for there.
    [Fact]
    public void LowPressureInHeating_LooksAtTheOutdoorCoilBeforeTheIndoorOne()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "low-pressure-code");
        walker.Note(new ModeStated("heating"));
        WalkRecord walk = HiddenFault.Typical("undercharge-leak").Walk(walker);
        int indoor = walk.Steps.IndexOf("coil-look");
        Assert.Contains("outdoor-frost", walk.Steps);
        Assert.True(indoor < 0 || walk.Steps.IndexOf("outdoor-frost") < indoor, string.Join(", ", walk.Steps));
    }

    [Theory]
    [InlineData("ostvik-lc")]
    [InlineData("veldarn-nord")]
    public void ControllerCable_ThatTheShortLeadAccuses_IsMeasuredBeforeItIsChanged(string series)
    {
        WalkRecord walk = HiddenFault.Typical("wired-controller-link")
            .Walk(new Walker(ShippedContent.Assistant).Begin(series, "technician", "controller-no-link"));
        Assert.InRange(walk.Steps.IndexOf("controller-cable-continuity"), 0,
            walk.Steps.IndexOf("mend-controller-cable"));
    }

    // A unit that beeps to its remote control has heard it.
    [Theory]
    [InlineData("brenholt-ws", "remote-no-response")]
    [InlineData("brenholt-ws", "wrong-mode-or-settings")]
    [InlineData("tarn-duo", "remote-no-response")]
    public void RemoteControl_ThatTheUnitAnswers_IsNotHeldBeforeACamera(string series, string symptom)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin(series, "owner", symptom);
        walker.Note(new OutcomeSeen("remote-batteries", "beeps", [1, 0, 0], null, "Yes, as before"));
        Assert.DoesNotContain("remote-camera", HiddenFault.Typical("none-of-these").Walk(walker).Steps);
    }
}
