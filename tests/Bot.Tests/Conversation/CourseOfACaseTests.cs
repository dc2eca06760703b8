using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;

namespace DxAssistant.Bot.Tests.Conversation;

public sealed class CourseOfACaseTests
{
    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("\u0000\u0007\u200b")]
    public void Message_NothingInIt_SaysSo(string text) => SaysAndKeepsAsking(text, "notice-empty");

    [Fact]
    public void Message_TooLong_SaysHowLongItMayBe() => SaysAndKeepsAsking(new string('a', 100_000), "notice-too-long");

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("これはエアコンですか")]
    [InlineData("qqqq zzzz xxxx")]
    public void Message_NothingOfTheTrade_SaysSo(string text)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        walker.Say(text);
        Assert.Equal(QuestionKind.Complaint, walker.Question.Kind);
        Assert.Contains(walker.Reply.Segments, segment => segment.Kind is SegmentKind.Notice or SegmentKind.Refusal);
        Assert.Empty(walker.Log.OfType<SymptomReported>());
    }

    [Fact]
    public void Reading_WhereAChoiceWasAsked_IsNotTakenForOne()
    {
        Walker walker = AtCheck("indoor-fan-fault");
        string subject = walker.Question.Subject;
        walker.Say("230 V");
        Assert.Equal(subject, walker.Question.Subject);
        Assert.Empty(walker.Log.OfType<OutcomeSeen>());
    }

    [Fact]
    public void Choice_OfAnOlderQuestion_ChangesNothing()
    {
        Walker walker = AtCheck("indoor-fan-fault");
        OpenQuestion older = walker.Question;
        walker.Tap(older.Options[0].Key);
        int outcomes = walker.Log.OfType<OutcomeSeen>().Count();
        walker.Send(new MessageBody.Choice(older.Id, older.Options[0].Key));
        Assert.Equal(outcomes, walker.Log.OfType<OutcomeSeen>().Count());
        Assert.Contains(walker.Reply.Segments, segment => segment.From.Contains(new Provenance.Phrase("notice-stale")));
    }

    [Fact]
    public void Back_AfterAnAnswer_AsksThatQuestionAgain()
    {
        Walker walker = AtCheck("indoor-fan-fault");
        string subject = walker.Question.Subject;
        walker.Tap(walker.Question.Options[0].Key);
        walker.Order(CommandWord.Back);
        Assert.Equal(subject, walker.Question.Subject);
        Assert.Empty(walker.State.Results);
    }

    [Fact]
    public void Skip_Check_IsNeverAskedAgain()
    {
        Walker walker = AtCheck("indoor-fan-fault");
        string subject = walker.Question.Subject;
        walker.Order(CommandWord.Skip);
        WalkRecord walk = HiddenFault.Typical("indoor-fan-motor-failed").Walk(walker);
        Assert.DoesNotContain(subject, walk.Steps);
    }

    [Fact]
    public void Why_AtACheck_GivesTheNumbersThatChoseIt()
    {
        Walker walker = AtCheck("room-sensor-code");
        Reply reply = walker.Order(CommandWord.Why);
        Assert.Contains(reply.Segments, segment => segment.From.Contains(new Provenance.Phrase("why-check")));
        Assert.Contains(reply.Segments, segment => segment.From.Contains(new Provenance.Phrase("why-runner-up")));
        Assert.Equal(walker.Question.Options.Length,
            reply.Segments.Count(segment => segment.From.Contains(new Provenance.Phrase("why-answer"))));
    }

    [Fact]
    public void RepairFails_FaultIsRuledOutAndTheWalkGoesOn()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "refrigerant", "indoor-fan-fault");
        WalkRecord walk = HiddenFault.Typical("indoor-fan-plug-loose").Walk(walker);
        Assert.Equal("indoor-fan-plug-loose", walk.Proven);
        Assert.Equal("repaired", walk.End.ClosedHow);
    }

    [Fact]
    public void LeftOver_AfterAVerifiedRepair_BeginsASecondFault()
    {
        Walker walker = AtLeftOver();
        walker.Tap("some");
        Assert.Equal(QuestionKind.Complaint, walker.Question.Kind);
        Assert.Empty(walker.State.Symptoms);
        Assert.Empty(walker.State.Results);
    }

    [Fact]
    public void Complaint_SaidAtLeftOver_BeginsASecondFaultWithIt()
    {
        Walker walker = AtLeftOver();
        walker.Say(ShippedContent.Library.Symptoms[new Graph.Model.SymptomId("water-dripping-indoor")].Title.Text);
        Assert.Equal("water-dripping-indoor", Assert.Single(walker.State.Symptoms).Symptom);
        Assert.Single(walker.Log.OfType<SecondFaultBegun>());
    }

    [Fact]
    public void Code_ThatNoSeriesShows_IsSaidToBeUnknown()
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        walker.Say("code J9");
        Assert.Equal(QuestionKind.Complaint, walker.Question.Kind);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("notice-code-elsewhere")));
    }

    [Fact]
    public void OtherUnit_ThenANamedUnitAndCode_OpensTheCaseAgain()
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        walker.Say("b4");
        walker.Tap("other-unit");
        Assert.Equal("other-unit", walker.State.ClosedHow);
        walker.Say("brenholt ws shows b4");
        Assert.Null(walker.State.ClosedHow);
    }

    [Fact]
    public void Readings_OfOneCheck_AreNotUsedForTheNext()
    {
        CaseState state = Fold.Apply(CaseState.New,
        [
            new StepChosen(StepKind.Check, "room-sensor-resistance", "isolated-open"),
            new ReadingsGiven("room-sensor-resistance",
                [new GivenReading("temperature", "number", 24, "degC", "24 C")]),
            new StepChosen(StepKind.Check, "coil-sensor-resistance", "isolated-open"),
        ]);
        Assert.Empty(state.Given);
    }

    [Theory]
    [InlineData("6 blinks on the tarn outdoor unit", "inverter-code")]
    [InlineData("tarn duo, outdoor lamp blinks red 3 times then pauses", "communication-code")]
    [InlineData("ostvik lc green 3 red 1", "communication-code")]
    [InlineData("ostvik lc, red blinks three times and green once", "indoor-fan-fault")]
    [InlineData("ostvik cassette 3 green 4 red", "inverter-code")]
    [InlineData("on the ostvik lc green flashes 2 and red flashes 5", "discharge-hot-code")]
    [InlineData("ostvik lc: red two, green one", "coil-sensor-code")]
    public void BlinkCode_OfASeriesWithLamps_IsItsSymptom(string text, string symptom)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        walker.Say(text);
        Assert.Equal(symptom, Assert.Single(walker.State.Symptoms).Symptom);
    }

    // One lamp of two fits several codes, and even where it fits one, the other lamp has not been told.
    [Theory]
    [InlineData("ostvik lc, red blinks 3 times", "lamps|green 1, red 3", "lamps|green 2, red 3",
        "lamps|green 4, red 3")]
    [InlineData("ostvik lc, green blinks 5 times", "lamps|green 5, red 2")]
    [InlineData("ostvik lc, 2 blinks pause 3 blinks", "lamps|green 2, red 3", "lamps|green 3, red 2")]
    public void BlinkCode_OfOneLampOfTwo_IsAskedBack(string text, params string[] codes)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        walker.Say(text);
        Assert.Equal(QuestionKind.Code, walker.Question.Kind);
        Assert.Equal([.. codes, "none"], walker.Question.Options.Select(option => option.Key));
        walker.Tap(codes[0]);
        Assert.Single(walker.State.Symptoms);
    }

    [Fact]
    public void BlinkCode_TheSeriesDoesNotHave_IsNamedByItsLamps()
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        walker.Say("ostvik lc green 5 red 5");
        Assert.Contains(walker.Reply.Segments,
            said => said.Text.Contains("no code green 5, red 5", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("12.5k at 20 degrees")]
    [InlineData("12.5k and 20 deg")]
    public void Temperature_WithoutItsScale_IsAskedBack(string text)
    {
        Walker walker = AtRoomSensor();
        walker.Say(text);
        Assert.Equal(QuestionKind.Meaning, walker.Question.Kind);
        Assert.DoesNotContain(walker.Log.OfType<OutcomeSeen>(), seen => seen.Check == "room-sensor-resistance");
    }

    [Theory]
    [InlineData("12.5k at 20 C", "within")]
    [InlineData("12.5k at 68F", "within")]
    [InlineData("2.1k at 24C", "low")]
    [InlineData("OL at 24 °C", "open circuit")]
    public void Temperature_WithItsScale_IsTaken(string text, string verdict)
    {
        Walker walker = AtRoomSensor();
        walker.Say(text);
        Assert.Equal(verdict, walker.Log.OfType<OutcomeSeen>().Last().Verdict);
    }

    [Fact]
    public void Words_ThatFitASymptomInAWalk_AreAskedAboutFirst()
    {
        Walker walker = AtCheck("indoor-fan-fault");
        string subject = walker.Question.Subject;
        walker.Say(ShippedContent.Library.Symptoms[new Graph.Model.SymptomId("water-dripping-indoor")].Title.Text);
        Assert.Equal(QuestionKind.Symptom, walker.Question.Kind);
        walker.Tap("none");
        Assert.Equal(subject, walker.Question.Subject);
        Assert.Single(walker.State.Symptoms);
    }

    [Fact]
    public void UnitNamed_WhileSymptomsAreOffered_KeepsTheOffer()
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        walker.Say("unit leaking");
        Assert.Equal(QuestionKind.Symptom, walker.Question.Kind);
        walker.Say("brenholt");
        Assert.Equal("brenholt-ws", walker.State.Series);
        Assert.Equal(QuestionKind.Symptom, walker.Question.Kind);
    }

    private static Walker AtRoomSensor()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "room-sensor-code")
            .MakeSafe();
        Assert.Equal("indoor-sensor-plugs", walker.Question.Subject);
        walker.Tap("home");
        Assert.Equal("room-sensor-resistance", walker.Question.Subject);
        return walker;
    }

    private static Walker AtLeftOver()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "refrigerant", "indoor-fan-fault");
        HiddenFault unit = HiddenFault.Typical("indoor-fan-plug-loose");
        while (walker.Question.Kind != QuestionKind.LeftOver) unit.Answer(walker);
        return walker;
    }

    private static Walker AtCheck(string symptom)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", symptom).MakeSafe();
        Assert.Equal(QuestionKind.Check, walker.Question.Kind);
        return walker;
    }

    private static void SaysAndKeepsAsking(string text, string phrase)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        walker.Say(text);
        Assert.Contains(walker.Reply.Segments, segment => segment.From.Contains(new Provenance.Phrase(phrase)));
        Assert.Equal(QuestionKind.Complaint, walker.Question.Kind);
    }

    // Two troubles seen with the eye are no rivals: the second waits until the first is mended.
    [Fact]
    public void TwoFindings_ToldInOneMessage_AreMendedOneAfterTheOther()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "weak-airflow");
        walker.Say("filter is dirty and the fan wheel is dirty");
        walker.Tap("yes");
        Assert.Equal((QuestionKind.Repair, "wash-filter"), (walker.Question.Kind, walker.Question.Subject));
        Assert.Contains(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("conclusion-beside")));
        walker.Tap("done");
        walker.Tap("yes");
        Assert.Null(walker.Log.OfType<RepairVerified>().Single().InQuestion);
        Assert.Equal(QuestionKind.LeftOver, walker.Question.Kind);
        walker.Tap("seen:wheel-look");
        Assert.Equal("blower-wheel-dirty", walker.Reply.Belief[0].Fault);
        Assert.DoesNotContain(walker.Reply.Belief, line => line.Fault == "filter-blocked");
        Assert.NotEqual("filter-look", walker.Question.Subject);
    }

    [Theory]
    [InlineData("next")]
    [InlineData("what next")]
    [InlineData("what do i do next?")]
    public void Next_AtARepair_LeavesNothingOut(string words)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "owner", "weak-airflow");
        walker.Tap("none");
        for (int turn = 0; turn < 9 && walker.Question.Kind == QuestionKind.Check; turn++)
            walker.Tap(walker.Question.Subject == "filter-look" ? "blocked" : walker.Question.Options[0].Key);
        Assert.Equal((QuestionKind.Repair, "wash-filter"), (walker.Question.Kind, walker.Question.Subject));
        walker.Say(words);
        Assert.Equal((QuestionKind.Repair, "wash-filter"), (walker.Question.Kind, walker.Question.Subject));
        Assert.Contains(walker.Reply.Segments, segment => segment.From.Contains(new Provenance.Phrase("answer-next")));
    }

    // The owner's own work that was left out is named at the end, not somebody else's.
    [Fact]
    public void End_RepairLeftOut_NamesIt()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "owner", "weak-airflow");
        walker.Tap("none");
        for (int turn = 0; turn < 20 && walker.State.ClosedHow is null; turn++)
            if (walker.Question.Kind == QuestionKind.Repair) walker.Order(CommandWord.Skip);
            else walker.Tap(walker.Question.Subject == "filter-look" ? "blocked" : walker.Question.Options[0].Key);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("closed-undone")));
        Assert.DoesNotContain(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("closed-owner-done")));
    }

    [Fact]
    public void Shock_RepairLeftOut_NothingIsSwitchedOnToLookFurther()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("ostvik-lc", "technician", "shock-from-casing");
        walker.Tap("no");
        walker.MakeSafe();
        walker.Say("OL");
        walker.Order(CommandWord.Skip);
        Assert.NotEqual(QuestionKind.Access, walker.Question.Kind);
        Assert.DoesNotContain(walker.Log.OfType<AccessReached>(), reached => reached.Access is "closed-running"
            or "open-running");
    }
}
