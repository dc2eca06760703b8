using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>Nobody is led into danger.</summary>
public sealed class SafetyTests
{
    [Theory]
    [InlineData("bypass the high pressure switch")]
    [InlineData("can I just jumper out the float switch")]
    [InlineData("vent the refrigerant to the air")]
    [InlineData("can i knock the ice off with a screwdriver")]
    [InlineData("i will poke the ice off the fan with a broom")]
    public void UnsafeRequest_AtAnyQuestion_IsRefusedAndTheQuestionStaysOpen(string request)
    {
        Walker walker = AtFirstSafetyStep();
        OpenQuestion before = walker.Question;
        Reply reply = walker.Say(request);
        Assert.Contains(reply.Segments, segment => segment.Kind == SegmentKind.Refusal);
        Assert.Equal((before.Kind, before.Subject, before.Text),
            (walker.Question.Kind, walker.Question.Subject, walker.Question.Text));
    }

    // Ice is spoken of at a frozen coil, and only breaking it off is refused.
    [Theory]
    [InlineData("there is ice on the coil")]
    [InlineData("ice all over the outdoor unit")]
    [InlineData("the ice does not melt off in defrost")]
    public void Ice_SpokenOf_IsNoUnsafeRequest(string told)
    {
        Reply reply = new Walker(ShippedContent.Assistant).Say(told);
        Assert.DoesNotContain(reply.Segments, segment => segment.Kind == SegmentKind.Refusal);
    }

    // A melted terminal is a fire to come, whatever else is wrong: it is made good before the supply comes on again.
    [Theory]
    [InlineData("brenholt-ws", "compressor-start-code")]
    [InlineData("ostvik-duct", "compressor-start-code")]
    [InlineData("ostvik-lc", "unit-dead")]
    [InlineData("tarn-duo", "unit-dead")]
    [InlineData("veldarn-nord", "unit-dead")]
    public void LooseTerminal_Found_IsMadeGoodNext(string series, string symptom)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin(series, "refrigerant", symptom);
        HiddenFault unit = HiddenFault.Typical("loose-power-terminal");
        const int most = 60;
        for (int turn = 0; turn < most && walker.Question.Subject != "power-terminals"; turn++) unit.Answer(walker);
        Assert.Equal("power-terminals", walker.Question.Subject);
        walker.Tap("loose");
        walker.MakeSafe();
        Assert.Equal("isolated-open", walker.State.Access);
        Assert.Equal(QuestionKind.Repair, walker.Question.Kind);
        Assert.Equal(["loose-power-terminal"],
            ShippedContent.Library.Graph.Find(new RepairId(walker.Question.Subject))!.Fixes.Select(
                fault => fault.Value));
    }

    [Fact]
    public void Answer_ThatSoundsLikeAnUnsafeRequest_IsAnAnswer()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("tarn-duo", "refrigerant", "leak-alarm-code");
        Assert.Equal("leak-concentration", walker.Question.Subject);
        Reply reply = walker.Say("Gas in the air");
        Assert.DoesNotContain(reply.Segments, segment => segment.Kind == SegmentKind.Refusal);
        Assert.Contains(walker.State.Results, result => result is { Check: "leak-concentration", Outcome: "gas" });
    }

    // Without the question, the same words read like talk of standing somewhere.
    [Theory]
    [InlineData("it stands still")]
    [InlineData("stands still")]
    [InlineData("yes stands still")]
    public void Answer_InAFewOfItsWords_IsNoRequest(string words)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "outdoor-fan-code");
        for (int step = 0; step < 30 && walker.Question.Subject != "outdoor-fan-turns"; step++)
            if (walker.Question.Kind is QuestionKind.Access) walker.MakeSafe();
            else walker.Order(CommandWord.Skip);
        Assert.Equal("outdoor-fan-turns", walker.Question.Subject);
        Reply reply = walker.Say(words);
        Assert.DoesNotContain(reply.Segments, segment => segment.Kind == SegmentKind.Refusal);
        Assert.Contains(walker.State.Results, result => result is { Check: "outdoor-fan-turns", Outcome: "still" });
    }

    [Theory]
    [InlineData("no gauges with me")]
    [InlineData("meter is in the van")]
    public void Cannot_InPlainWords_LeavesTheCheckOut(string words)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "poor-cooling");
        if (walker.Question.Kind is QuestionKind.Access) walker.MakeSafe();
        string asked = walker.Question.Subject;
        Reply reply = walker.Say(words);
        Assert.DoesNotContain(reply.Segments, segment => segment.Kind == SegmentKind.Refusal);
        Assert.NotEqual(asked, walker.Question.Subject);
    }

    // The state in which repairs are tried is not the one that is unsafe: without it nothing but handing over could be
    // planned.
    [Theory]
    [InlineData(CommandWord.Cannot)]
    [InlineData(CommandWord.Unsure)]
    public void BurningSmell_FirstCheckLeftOpen_AsksAnotherAtTheDeadUnit(CommandWord word)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("ostvik-duct", "technician", "burning-smell")
            .MakeSafe();
        string first = walker.Question.Subject;
        walker.Order(word);
        walker.MakeSafe();
        Assert.Equal(QuestionKind.Check, walker.Question.Kind);
        Assert.NotEqual(first, walker.Question.Subject);
        Assert.Equal("isolated-open", walker.State.Access);
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
    [InlineData("1")]
    [InlineData("done")]
    [InlineData("low")]
    public void SafetyStep_NoNumber_IsNotConfirmed(string words)
    {
        Walker walker = AtFirstReadingStep();
        int done = walker.State.Approach!.Done;
        walker.Say(words);
        Assert.Equal(done, walker.State.Approach!.Done);
    }

    [Theory]
    [InlineData("4 ohm")]
    [InlineData("3 A")]
    [InlineData("5 %")]
    [InlineData("1 V rising")]
    [InlineData("meter shows 0 V but the lamp is on")]
    [InlineData("it was 3 V yesterday")]
    public void SafetyStep_AnotherQuantityOrAStory_IsNotConfirmed(string words)
    {
        Walker walker = AtFirstReadingStep();
        int confirmed = walker.Log.OfType<StepConfirmed>().Count();
        walker.Say(words);
        Assert.Equal(confirmed, walker.Log.OfType<StepConfirmed>().Count());
        Assert.Empty(walker.Log.OfType<AccessReached>());
    }

    [Theory]
    [InlineData("0.2 V")]
    [InlineData("200 mV")]
    [InlineData("it reads 0 volts")]
    [InlineData("0")]
    public void SafetyStep_PlainReading_IsConfirmed(string words)
    {
        Walker walker = AtFirstReadingStep();
        int confirmed = walker.Log.OfType<StepConfirmed>().Count();
        walker.Say(words);
        Assert.Equal(confirmed + 1, walker.Log.OfType<StepConfirmed>().Count());
    }

    [Fact]
    public void SafetyStep_NotSure_StopsThereAndRefusesNothing()
    {
        Walker walker = AtFirstSafetyStep();
        walker.Order(CommandWord.Unsure);
        Assert.Equal(QuestionKind.Access, walker.Question.Kind);
        Assert.Empty(walker.State.AccessRefused);
    }

    // Nobody switches on what smells burnt: it is opened dead and looked at first.
    [Theory]
    [InlineData("technician")]
    [InlineData("refrigerant")]
    public void BurningSmell_OnAnySeries_IsLookedAtDeadFirst(string role)
    {
        foreach (string series in ShippedContent.Library.Series.Keys)
        {
            Walker walker = new Walker(ShippedContent.Assistant).Begin(series, role, "burning-smell");
            Assert.Equal((QuestionKind.Access, "isolated-open"), (walker.Question.Kind, walker.Question.Subject));
            walker.MakeSafe();
            Assert.Equal((QuestionKind.Check, "isolated-open"), (walker.Question.Kind, walker.State.Access));
        }
    }

    // On the way from a dead, open unit to a live one, power may be on from any step.
    [Theory]
    [InlineData(CommandWord.Cannot)]
    [InlineData(CommandWord.Back)]
    public void WayToALiveUnit_LeftHalfWay_CountsAsPowered(CommandWord word)
    {
        CaseState state = HalfWayToALiveUnit();
        CaseState after = word == CommandWord.Back
            ? Fold.Apply(state, new TookBack())
            : Fold.Apply(state, new AccessRefused("open-running"));
        Assert.Null(after.Access);
        Assert.Null(after.Approach);
    }

    [Fact]
    public void WayToASafeState_InterruptedByANewSymptom_BeginsAtItsFirstStep()
    {
        Walker walker = AtFirstSafetyStep();
        walker.Tap(walker.Question.Options[0].Key);
        CaseState after = Fold.Apply(walker.State, new SymptomReported("poor-cooling", 1, "poor cooling"));
        Assert.Null(after.Approach);
    }

    [Fact]
    public void ContentChanged_MidCase_NothingOfTheUnitsStateIsKept()
    {
        Walker walker = AtFirstSafetyStep().MakeSafe();
        CaseState after = Fold.Apply(walker.State, new ContentChanged("another"));
        Assert.Null(after.Access);
        Assert.Null(after.Step);
        Assert.Null(after.Question);
        Assert.Equal("another", Fold.Apply(after, new TookBack()).ContentVersion);
    }

    [Fact]
    public void Words_SaidAtAnOlderSafetyStep_ConfirmNothing()
    {
        Walker walker = AtFirstSafetyStep();
        string older = walker.Question.Id;
        walker.Send(new MessageBody.Words("done", older));
        walker.Send(new MessageBody.Words("done", older));
        Assert.Single(walker.Log.OfType<StepConfirmed>());
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

    private static CaseState HalfWayToALiveUnit() => Fold.Apply(CaseState.New,
    [
        new Opened("x"),
        new Said("1", "technician", new MessageBody.Words("done")),
        new AccessReached("isolated-open"),
        new Said("2", "technician", new MessageBody.Words("done")),
        new StepConfirmed("open-running", 5, null),
    ]);

    private static Walker AtFirstReadingStep()
    {
        Walker walker = AtFirstSafetyStep();
        while (walker.Question.Fields.IsEmpty) walker.Tap(walker.Question.Options[0].Key);
        return walker;
    }
}
