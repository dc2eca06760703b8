using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>
/// The walk of somebody who measures: what a reading says at once, how it is put right, and what is done again and what
/// is not.
/// </summary>
public sealed class MeasuredWalkTests
{
    private static Library Library => ShippedContent.Library;

    // Common practice, no source: in cooling the air comes out colder than it goes in; warmer means that heat flows the
    // other way.
    [Theory]
    [InlineData("temperature-split", "75 in 91 out", "reversing-valve-stuck")]
    [InlineData("temperature-split-heating", "68 in 55 out", "reversing-valve-stuck")]
    public void Readings_AirChangesTheWrongWay_IsAFaultThatTheValveExplains(string check, string words, string fault)
    {
        Walker walker = At(check, "brenholt-ws", "refrigerant");
        double before = Believed(walker, fault);
        walker.Say(words);
        SeenResult result = Assert.Single(walker.State.Results);
        Assert.Equal(("reversed", "reversed"), (result.Outcome, result.Verdict));
        Assert.True(Believed(walker, fault) > 3 * before);
    }

    [Fact]
    public void FirstMessage_NameOfADifferenceBeforeTwoTemperatures_AreTemperatures()
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say("brenholt ws, technician, poor cooling, split in cooling 75F in 91F out");
        walker.Tap("yes");
        Assert.Equal("reversed", Assert.Single(walker.State.Results).Outcome);
    }

    // Common practice, no source: an open or shorted sensor is so at any temperature.
    [Theory]
    [InlineData("OL", "open circuit")]
    [InlineData("open line", "open circuit")]
    [InlineData("shorted", "short circuit")]
    public void Readings_SensorOpenOrShort_IsJudgedWithoutATemperature(string words, string verdict)
    {
        Walker walker = At("room-sensor-resistance", "brenholt-ws", "technician", "room-sensor-code");
        walker.Say(words);
        Assert.Equal(verdict, Assert.Single(walker.State.Results).Verdict);
        Assert.Empty(walker.State.Given);
    }

    [Fact]
    public void Readings_SensorBetweenOpenAndShort_StillAsksForTheTemperature()
    {
        Walker walker = At("room-sensor-resistance", "brenholt-ws", "technician", "room-sensor-code");
        walker.Say("9.8k");
        Assert.Empty(walker.State.Results);
        Assert.Equal("room-sensor-resistance", walker.Question.Subject);
    }

    // Which leg is dead decides what is looked for: that is asked, never guessed.
    [Fact]
    public void Readings_ThreeBareValuesOfWhichOneIsZero_AreAskedByTheirPlace()
    {
        Walker walker = At("supply-legs", "brenholt-ws", "technician", "supply-voltage-code");
        walker.Say("118 118 0");
        Assert.Empty(walker.State.Results);
        Assert.Equal("supply-legs", walker.Question.Subject);
        Assert.Contains(walker.Reply.Segments,
            said => said.From.Contains(new Provenance.Phrase("notice-give-readings")));
    }

    [Theory]
    [InlineData("I misread the suction, it was 118")]
    [InlineData("sorry, I misread the suction pressure, it was 118 psig")]
    [InlineData("the suction was 118 not 181")]
    [InlineData("suction was not 181, 118")]
    [InlineData("the suction reading was wrong, it is 118 psig")]
    public void EarlierReading_CorrectedByItsName_CountsAnew(string words)
    {
        Walker walker = At("suction-pressure", "brenholt-ws", "refrigerant");
        walker.Say("181 psig, 75F");
        Assert.NotEqual("suction-pressure", walker.Question.Subject);
        walker.Say(words);
        SeenResult result = walker.State.Results.Single(known => known.Check == "suction-pressure");
        Assert.Equal("Suction 118 psig, Return air 75 °F", result.Words);
        Assert.Equal(["poor-cooling"], walker.State.Symptoms.Select(told => told.Symptom));
    }

    [Theory]
    [InlineData("the suction was 118 not 240")]
    [InlineData("suction 118 psig")]
    public void EarlierReading_NamedWithoutSayingThatItWasWrong_Stands(string words)
    {
        Walker walker = At("suction-pressure", "brenholt-ws", "refrigerant");
        walker.Say("181 psig, 75F");
        walker.Say(words);
        Assert.Equal("Suction 181 psig, Return air 75 °F",
            walker.State.Results.Single(known => known.Check == "suction-pressure").Words);
    }

    // Common practice, no source: what is read on gauges in a trial run needs them on.
    [Fact]
    public void Trial_ThatMeasuresPressures_BringsTheGaugesBack()
    {
        Walker walker = AfterRepair("recover-and-weigh-in", "refrigerant");
        Assert.Equal((QuestionKind.Access, "gauges-on"), (walker.Question.Kind, walker.Question.Subject));
        walker.MakeSafe();
        Assert.Equal((QuestionKind.Verify, "gauges-on"), (walker.Question.Kind, walker.State.Access));
    }

    [Fact]
    public void Trial_GaugesCannotBePutOn_IsMadeWhereAllAre()
    {
        Walker walker = AfterRepair("recover-and-weigh-in", "refrigerant");
        walker.Order(CommandWord.Cannot);
        walker.MakeSafe();
        Assert.Equal((QuestionKind.Verify, "closed-running"), (walker.Question.Kind, walker.State.Access));
    }

    [Fact]
    public void Trial_OfPagesThatAskForPressures_NamesTheGauges() => Assert.All(
        Library.Repairs.Values.Where(page => page.Verify.Text.Contains("gauge", StringComparison.OrdinalIgnoreCase)),
        page => Assert.Equal(new AccessId("gauges-on"), page.VerifyIn));

    [Fact]
    public void Access_FromTheDeadUnitToLive_ProvesTheSupplyDeadNotTwice()
    {
        Walker walker = On("supply-legs", "open-running", new AccessId("isolated-open"));
        walker.Order(CommandWord.Again);
        Assert.Equal((QuestionKind.Access, "open-running"), (walker.Question.Kind, walker.Question.Subject));
        Assert.Empty(walker.Question.Fields);
        Assert.Contains(walker.Reply.Segments, said => said.Text.StartsWith("Step 1 of 5.", StringComparison.Ordinal));
        for (int step = 0; walker.Question.Kind == QuestionKind.Access; step++)
        {
            Assert.InRange(step, 0, 5);
            Assert.Empty(walker.Question.Fields);
            walker.Tap(walker.Question.Options[0].Key);
        }

        Assert.Equal("open-running", walker.State.Access);
    }

    [Fact]
    public void Access_FromTheRunningUnitToLive_ProvesItDead()
    {
        Walker walker = On("supply-legs", "open-running", new AccessId("closed-running"));
        walker.Order(CommandWord.Again);
        Assert.NotEmpty(walker.Question.Fields);
    }

    [Theory]
    [InlineData("tarn duo, technician, the bedroom does not get cold, all the other heads work fine")]
    [InlineData("tarn duo, technician, cools poorly, the other units cool fine")]
    [InlineData("tarn duo, technician, cools poorly, other zones are working")]
    public void FirstMessage_OtherRoomsTold_AreNotAskedFor(string words)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say(words);
        walker.Tap("yes");
        Assert.Equal("only-this", walker.State.Results.Single(result => result.Check == "other-rooms").Outcome);
    }

    [Fact]
    public void HighPressureCode_AsksForTheMode_AndInHeatingReadsTheHighSideThere()
    {
        Walker walker = At("mode-at-code", "veldarn-nord", "refrigerant", "high-pressure-code");
        walker.Tap("heating");
        Assert.Equal("heating", walker.State.Mode);
        var view = new CaseView(Library, walker.State);
        Assert.True(view.IsFor(Library.Checks[new("high-side-pressure-heating")]));
        Assert.False(view.IsFor(Library.Checks[new("high-side-pressure")]));
        Assert.False(view.IsFor(Library.Checks[new("condensing-temperature")]));
    }

    [Fact]
    public void HighPressureCode_ModeToldBefore_IsNotAskedAgain()
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say("veldarn nord, technician, high pressure code, in heating");
        walker.Tap("yes");
        Assert.Equal("heating", walker.State.Results.Single(result => result.Check == "mode-at-code").Outcome);
    }

    [Theory]
    [InlineData("in heating", "heating")]
    [InlineData("when cooling", "cooling")]
    [InlineData("both", "both")]
    public void HighPressureCode_ModeSaidWhereItIsAsked_IsTaken(string words, string mode)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say("veldarn nord, technician, high pressure code");
        walker.Tap("yes");
        Assert.Equal("mode-at-code", walker.Question.Subject);
        walker.Say(words);
        Assert.Equal(mode, walker.State.Results.Single(result => result.Check == "mode-at-code").Outcome);
    }

    [Fact]
    public void HighPressureCode_ModeNotTold_IsAskedBeforeAnyPressure()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("veldarn-nord", "refrigerant", "high-pressure-code");
        for (int turn = 0; walker.Question.Subject != "mode-at-code"; turn++)
        {
            Assert.InRange(turn, 0, 8);
            Assert.Equal(QuestionKind.Check, walker.Question.Kind);
            walker.Tap(Sound(walker.Question.Subject));
        }
    }

    // Common practice, no source: with both breakers on, a technician at a dead unit reads the supply.
    [Fact]
    public void DeadUnit_BreakersOn_TechnicianReadsTheSupplyBeforeTheBatteriesOfTheRemote()
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say("brenholt ws, technician, unit is dead, both breakers are on");
        walker.Tap("yes");
        Assert.Contains(walker.State.Step!.Id, (string[])["supply-at-indoor", "supply-legs"]);
    }

    [Fact]
    public void Trial_OfARepairOnAGuess_ProvesNoFault()
    {
        Walker walker = AfterRepair("replace-expansion-valve", "refrigerant", "closed-running");
        double believed = Believed(walker, "expansion-valve-stuck");
        Assert.InRange(believed, 0, 0.3);
        walker.MakeSafe().Tap("yes");
        RepairVerified end = Assert.Single(walker.Log.OfType<RepairVerified>());
        Assert.NotNull(end.InQuestion);
        Assert.Contains(walker.Reply.Segments,
            said => said.From.Contains(new Provenance.Phrase("repair-worked-unproven")));
        Assert.DoesNotContain(walker.Reply.Segments,
            said => said.From.Contains(new Provenance.Phrase("repair-worked")));
        Assert.False(walker.State.Repairs.Single().Proves);
    }

    // One superheat in either mode says what the other would: asked for twice, one leak would count as two.
    [Theory]
    [InlineData("superheat", "superheat-heating")]
    [InlineData("superheat-heating", "superheat")]
    public void Check_FoundInTheOtherMode_IsNotAskedAgain(string done, string other)
    {
        CaseState both = Begun("brenholt-ws", "refrigerant", "low-pressure-code");
        Assert.True(new CaseView(Library, both).IsFor(Library.Checks[new(other)]));
        CaseState known = both with { Results = [new SeenResult(done, "high", [0, 0, 1], "high", "", [])] };
        Assert.False(new CaseView(Library, known).IsFor(Library.Checks[new(other)]));
        CaseState unsure = both with { Results = [new SeenResult(done, null, [1, 1, 1], null, "", [])] };
        Assert.True(new CaseView(Library, unsure).IsFor(Library.Checks[new(other)]));
    }

    // What a repair changes is changed however it is measured, else the old reading would bar the new one.
    [Fact]
    public void Repairs_ThatChangeACheck_ChangeWhatFindsTheSame() => Assert.All(Library.Repairs.Values, repair =>
        Assert.All(repair.Changes,
            check => Assert.Subset(repair.Changes.ToHashSet(), Library.Checks[check].SameAs.ToHashSet())));

    [Fact]
    public void Checks_ThatFindTheSame_SayItOfEachOther() => Assert.All(Library.Checks.Values, check =>
        Assert.All(check.SameAs, other => Assert.Contains(check.Id, Library.Checks[other].SameAs)));

    private static string Sound(string check)
    {
        Check node = Library.Graph.Find(new CheckId(check))!;
        return node.Outcomes[node.EveryOtherFault.IndexOf(node.EveryOtherFault.Max())].Value;
    }

    private static double Believed(Walker walker, string fault) =>
        new CaseView(Library, walker.State).Belief.ProbabilityOf(new FaultId(fault));

    // Just done, the unit still open.
    private static Walker AfterRepair(string repair, string role, string access = "isolated-open")
    {
        var walker = new Walker(ShippedContent.Assistant, Begun("brenholt-ws", role, "poor-cooling")
            with { Access = access, Unverified = repair });
        walker.Order(CommandWord.Again);
        return walker;
    }

    private static Walker On(string check, string there, AccessId from) => new(ShippedContent.Assistant,
        Begun("brenholt-ws", "technician", "unit-dead")
            with { Access = from.Value, Step = new ChosenStep(StepKind.Check, check, there) });

    private static CaseState Begun(string series, string role, string symptom) => CaseState.New with
    {
        ContentVersion = Library.Version, Role = role, Series = series,
        Symptoms = [new ReportedSymptom(symptom, 1, symptom)],
    };

    // A case at which this check is asked.
    private static Walker At(string check, string series, string role, string symptom = "poor-cooling")
    {
        CheckPage page = Library.Checks[new CheckId(check)];
        string access = Library.Graph.Find(page.Id)!.Access[0].Value;
        return new Walker(ShippedContent.Assistant, Begun(series, role, symptom) with
        {
            Access = access,
            Step = new ChosenStep(StepKind.Check, check, access),
            Question = new OpenQuestion("0", QuestionKind.Check, check, page.Ask.Text, [],
                [.. page.Outcomes.Select(outcome => new Option(outcome.Id.Value, outcome.Answer.Text))],
                [.. page.Readings.Select(field => new Field(field.Label, field.Unit.Symbol, field.Where.Text, null))],
                []),
        });
    }
}
