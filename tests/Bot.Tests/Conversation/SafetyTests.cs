using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>Nobody is led into danger.</summary>
public sealed class SafetyTests
{
    [Theory]
    [InlineData("bypass the high pressure switch")]
    [InlineData("can I just jumper out the float switch")]
    [InlineData("vent the refrigerant to the air")]
    public void UnsafeRequest_AtAnyQuestion_IsRefusedAndTheQuestionStaysOpen(string request)
    {
        Walker walker = AtFirstSafetyStep();
        OpenQuestion before = walker.Question;
        Reply reply = walker.Say(request);
        Assert.Contains(reply.Segments, segment => segment.Kind == SegmentKind.Refusal);
        Assert.Equal((before.Kind, before.Subject, before.Text), (walker.Question.Kind, walker.Question.Subject, walker.Question.Text));
    }

    [Fact]
    public void SafetyStep_UnsafeReading_StopsAtThatStep()
    {
        Walker walker = AtFirstReadingStep();
        int done = walker.State.Approach!.Done;
        Reply reply = walker.Say("231 V");
        Assert.Contains(reply.Segments, segment => segment.Kind == SegmentKind.Caution);
        Assert.Equal(done, walker.State.Approach!.Done);
    }

    [Theory]
    [InlineData("OL")]
    [InlineData("done")]
    [InlineData("low")]
    public void SafetyStep_NoNumber_IsNotConfirmed(string words)
    {
        Walker walker = AtFirstReadingStep();
        int done = walker.State.Approach!.Done;
        walker.Say(words);
        Assert.Equal(done, walker.State.Approach!.Done);
    }

    [Fact]
    public void SafetyStep_Skip_IsNotSkipped()
    {
        Walker walker = AtFirstSafetyStep();
        walker.Order(CommandWord.Skip);
        Assert.Equal(QuestionKind.Access, walker.Question.Kind);
        Assert.Empty(walker.Log.OfType<StepConfirmed>());
    }

    [Fact]
    public void SafetyStep_TappedTwice_ConfirmsOneStep()
    {
        Walker walker = AtFirstSafetyStep();
        string id = walker.Question.Id, key = walker.Question.Options[0].Key;
        walker.Send(new MessageBody.Choice(id, key));
        walker.Send(new MessageBody.Choice(id, key));
        Assert.Single(walker.Log.OfType<StepConfirmed>());
    }

    [Fact]
    public void TakenBack_AcrossAnAccessState_CountsAsPowered()
    {
        Walker walker = AtFirstSafetyStep().MakeSafe();
        Assert.Equal("isolated-open", walker.State.Access);
        while (walker.State.Access is not null) walker.Order(CommandWord.Back);
        Assert.Contains(walker.Reply.Segments, segment => segment.Kind == SegmentKind.Caution);
        Assert.Equal(QuestionKind.Access, walker.Question.Kind);
        Assert.Null(walker.State.Approach);
    }

    [Fact]
    public void AccessRefused_TheWalkTakesAnotherWay()
    {
        Walker walker = AtFirstSafetyStep();
        walker.Order(CommandWord.Cannot);
        Assert.Contains("isolated-open", walker.State.AccessRefused);
        Assert.NotEqual("isolated-open", walker.Question.Subject);
    }

    [Fact]
    public void Owner_AnySymptom_IsOnlyAskedWhatAnOwnerMayDo()
    {
        foreach (Graph.Model.SymptomId symptom in ShippedContent.Library.Symptoms.Keys)
        {
            Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "owner", symptom.Value);
            HiddenFault.Typical("none-of-these").Walk(walker);
            Assert.All(walker.Log.OfType<StepChosen>(), chosen => Assert.Equal("closed-running", chosen.Access));
            Assert.NotNull(walker.State.ClosedHow);
        }
    }

    [Fact]
    public void StartedOver_AfterOpening_BeginsPowered()
    {
        Walker walker = AtFirstSafetyStep().MakeSafe();
        walker.Order(CommandWord.StartOver);
        Assert.Null(walker.State.Access);
        Assert.Equal(QuestionKind.Complaint, walker.Question.Kind);
    }

    // A sensor code's first check is done on the open, dead unit.
    private static Walker AtFirstSafetyStep()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "room-sensor-code");
        Assert.Equal(QuestionKind.Access, walker.Question.Kind);
        return walker;
    }

    private static Walker AtFirstReadingStep()
    {
        Walker walker = AtFirstSafetyStep();
        while (walker.Question.Fields.IsEmpty) walker.Tap(walker.Question.Options[0].Key);
        return walker;
    }
}
