using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>
/// A check whose steps switch the unit on leaves it so: whoever opens it next locks it off again, step by step.
/// </summary>
public sealed class StateLeftTests
{
    private const string Isolated = "isolated-open";

    [Theory]
    [InlineData("breaker-compressor-unplugged", "on-trial")]
    [InlineData("controller-short-lead", "on-trial")]
    [InlineData("leak-sensor-swap", "closed-running")]
    public void Check_WhoseStepsSwitchOn_LeavesTheUnitThere(string check, string left)
    {
        Assert.Equal(new AccessId(left), ShippedContent.Library.Checks[new CheckId(check)].Leaves);
        Assert.Equal(new AccessId(left), ShippedContent.Library.Graph.Find(new CheckId(check))!.Leaves);
    }

    [Fact]
    public void Answer_WhereTheUnitWasSwitchedOn_IsolatesBeforeTheNextStepInside()
    {
        Walker walker = AtTheTrial();
        walker.Tap("holds");
        Assert.Equal("on-trial", walker.State.Access);
        Assert.Equal((QuestionKind.Access, Isolated), (walker.Question.Kind, walker.Question.Subject));
        Assert.Contains(walker.Reply.Segments, segment => segment.Kind == SegmentKind.Caution);
    }

    [Fact]
    public void Unsure_WhereTheUnitWasSwitchedOn_LeavesItOnToo()
    {
        Walker walker = AtTheTrial();
        walker.Order(CommandWord.Unsure);
        Assert.Equal("on-trial", walker.State.Access);
    }

    [Theory]
    [InlineData(CommandWord.Cannot)]
    [InlineData(CommandWord.Skip)]
    public void PassedOver_WhatWasNotDone_LeavesTheUnitAsItStands(CommandWord word)
    {
        Walker walker = AtTheTrial();
        walker.Order(word);
        Assert.Equal(Isolated, walker.State.Access);
    }

    // What was done on an earlier visit moves nothing now.
    [Fact]
    public void Told_OfEarlier_LeavesTheUnitAsItStands()
    {
        Walker walker = AtTheTrial();
        CaseState elsewhere = walker.State with { Step = null };
        Assert.Equal(Isolated,
            Fold.Apply(elsewhere,
                new OutcomeSeen("breaker-compressor-unplugged", "holds", [1, 0], null, "Yes, it holds")).Access);
    }

    // From the trial the way to any other state leads over the isolated unit.
    [Theory]
    [InlineData("closed-running")]
    [InlineData("isolated-closed")]
    [InlineData("open-running")]
    [InlineData("gauges-on")]
    public void Way_FromTheTrial_LeadsOverTheIsolatedUnit(string to) =>
        Assert.Equal(new AccessId(Isolated),
            ShippedContent.Library.Graph.Access.Way(new AccessId("on-trial"), new AccessId(to))[1]);

    private static Walker AtTheTrial()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "trips-breaker");
        walker.Note(new AccessReached(Isolated),
            new StepChosen(StepKind.Check, "breaker-compressor-unplugged", Isolated));
        walker.Order(CommandWord.Again);
        Assert.Equal("breaker-compressor-unplugged", walker.Question.Subject);
        Assert.Equal(Isolated, walker.State.Access);
        return walker;
    }
}
