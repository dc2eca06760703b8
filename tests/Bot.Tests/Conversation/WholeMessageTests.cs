using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Told;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>
/// Messages that tell several things at once: said back in one line, and nothing used before that is confirmed.
/// </summary>
public sealed class WholeMessageTests
{
    private const string Whole =
        "brenholt wall unit in cooling, showing b4, filter's clean, swapped the board last week, "
        + "room sensor 2.1k at 24C, I'm the tech";

    [Fact]
    public void Whole_BeforeItIsConfirmed_NothingCounts()
    {
        Walker walker = Told(Whole);
        Assert.Equal(QuestionKind.Told, walker.Question.Kind);
        Assert.Null(walker.State.Series);
        Assert.Null(walker.State.Role);
        Assert.Empty(walker.State.Symptoms);
        Assert.Empty(walker.State.Results);
        Assert.Empty(walker.State.Repairs);
    }

    [Fact]
    public void Whole_Confirmed_AllOfItCountsButWhatIsNotClear()
    {
        Walker walker = Told(Whole);
        walker.Say("yes");
        Assert.Equal("brenholt-ws", walker.State.Series);
        Assert.Equal("technician", walker.State.Role);
        Assert.Equal("cooling", walker.State.Mode);
        Assert.Equal("room-sensor-code", Assert.Single(walker.State.Symptoms).Symptom);
        Assert.Equal(["filter-look", "room-sensor-resistance"], walker.State.Results.Select(result => result.Check));
        Assert.Equal("low", walker.State.Results[1].Verdict);
        Assert.Empty(walker.State.Repairs);
        Assert.Null(walker.State.Access);
    }

    // The first of three voltages names where it was taken, the others their terminals.
    [Theory]
    [InlineData("Brenholt WS unit dead, tech here, 238 V at the isolator but only 120 V from L1 to ground and 118 V L2 "
        + "to ground")]
    [InlineData("Brenholt WS unit dead, tech here, 238 V L1 to L2, 120 V from L1 to ground and 118 V L2 to ground")]
    public void Voltages_WithTheirTerminals_AreOneMeasurement(string said)
    {
        Walker walker = Told(said);
        walker.Say("yes");
        var result = Assert.Single(walker.State.Results);
        Assert.Equal(("supply-legs", "within"), (result.Check, result.Verdict));
    }

    // A part of the voltage speaks for a break on the way, none at all for what is off; a breaker that is on speaks
    // against that.
    [Theory]
    [InlineData("supply voltage 120 V", "low", "supply-dead")]
    [InlineData("supply voltage 0 V", "absent", "no-power")]
    [InlineData("both breakers on, supply voltage 0 V", "absent", "supply-dead")]
    public void DeadUnit_VoltageAtItsTerminals_LeadsToWhatIsBroken(string said, string verdict, string likelier)
    {
        Walker walker = Told("ostvik duct, technician here, unit dead, " + said);
        walker.Say("yes");
        Assert.Equal(verdict, walker.State.Results[^1].Verdict);
        Assert.Equal(likelier, walker.Reply.Belief.First(line => line.Fault is "no-power" or "supply-dead").Fault);
    }

    // A small word parts two complaints as a stop does.
    [Theory]
    [InlineData("water drips from it and the fan is loud")]
    [InlineData("water drips from it, the fan is loud")]
    public void TwoComplaints_WithOrWithoutAStop_AreBothSaidBack(string said)
    {
        Assert.Equal(2, Told(said).State.Unconfirmed.Length);
    }

    // The name of a part is no code that is shown, though "indoor fan fault" says one.
    [Theory]
    [InlineData("brenholt ws, technician here, indoor fan is not turning", "indoor-fan-not-turning")]
    [InlineData("brenholt ws, technician here, indoor fan code", "indoor-fan-fault")]
    public void Complaint_NamesAPart_NoCodeIsHeardThatWasNotSaid(string said, string symptom)
    {
        Walker walker = Told(said);
        walker.Say("yes");
        Assert.Equal(symptom, Assert.Single(walker.State.Symptoms).Symptom);
    }

    [Fact]
    public void Board_OfWhichThereAreSeveral_CountsOnceItIsTapped()
    {
        Walker walker = Told(Whole);
        Option indoor = Assert.Single(walker.Question.Options,
            option => option.Label.EndsWith("Replace the indoor board", StringComparison.Ordinal));
        walker.Tap(indoor.Key);
        walker.Tap("yes");
        Assert.Equal("replace-indoor-board", Assert.Single(walker.State.Repairs).Repair);
        Assert.DoesNotContain(walker.Reply.Belief, line => line.Fault == "indoor-board-failed");
    }

    [Fact]
    public void Item_TakenBack_DoesNotCount()
    {
        Walker walker = Told("brenholt E5 steady, filter is clean, fan plug is seated");
        walker.Tap(Assert.Single(walker.Question.Options,
            option => option.Label.Contains("Indoor fan plug", StringComparison.Ordinal)).Key);
        walker.Tap("yes");
        Assert.Equal("filter-look", Assert.Single(walker.State.Results).Check);
    }

    [Fact]
    public void Back_AfterConfirming_AsksAgainWhetherItWasRight()
    {
        Walker walker = Told("brenholt E5 steady, filter is clean");
        walker.Tap("yes");
        walker.Order(CommandWord.Back);
        Assert.Equal(QuestionKind.Told, walker.Question.Kind);
        Assert.Empty(walker.State.Results);
    }

    [Theory]
    [InlineData("brenholt E5 steady, filter is not clean", "filter-look", "blocked")]
    [InlineData("brenholt E5 steady, the drain isn't blocked", "pour-test", "runs")]
    [InlineData("brenholt E5 steady and the fan plug is not seated", "fan-plug", "loose")]
    [InlineData("E5 steady brenholt filter is clean breaker is on", "breaker-once", "on")]
    public void Finding_WithOrWithoutNegation_IsThatOutcome(string text, string check, string outcome) =>
        Assert.Contains(Outcomes(text), found => found.Check == check && found.Seen == outcome);

    [Theory]
    [InlineData("brenholt b4, fan plug is seated wrong")]
    [InlineData("brenholt b4, should I clean the filter")]
    [InlineData("brenholt b4, filter is clean only on one side")]
    [InlineData("brenholt b4, not sure whether the drain is clear")]
    [InlineData("brenholt b4, will check if the breaker is on")]
    [InlineData("brenholt b4, filter is clean, filter is dirty")]
    public void Finding_InDoubt_IsNoOutcome(string text) => Assert.Empty(Outcomes(text));

    [Fact]
    public void Finding_SaidWithDoubt_CountsLess()
    {
        Walker walker = Told("brenholt E5 steady, I think the filter is clean");
        walker.Tap("yes");
        Assert.Null(Assert.Single(walker.State.Results).Outcome);
        Assert.InRange(walker.State.Results[0].Weights[0], 0.6, 0.9);
    }

    [Theory]
    [InlineData("b4 brenholt, I'm the homeowner", "owner")]
    [InlineData("owner on the phone, brenholt shows b4", "owner")]
    [InlineData("b4 brenholt, licensed tech here", "refrigerant")]
    [InlineData("brenholt ws 88 flashing I'm the tech", "technician")]
    [InlineData("Technician with refrigerant licence here. Brenholt b4", "refrigerant")]
    public void Person_Named_IsTheRole(string text, string role)
    {
        Walker walker = Told(text);
        walker.Tap("yes");
        Assert.Equal(role, walker.State.Role);
    }

    [Theory]
    [InlineData("the last tech swapped the indoor board, b4 brenholt")]
    [InlineData("customer says it drips, b4 brenholt")]
    [InlineData("b4 brenholt, fixed last year by another technician")]
    [InlineData("b4 brenholt please send me a technician")]
    [InlineData("we already had a technician last month, b4 brenholt")]
    [InlineData("b4 brenholt still waiting on technician")]
    public void Person_SpokenOf_IsNotTheRole(string text)
    {
        Walker walker = Told(text);
        if (walker.Question.Kind == QuestionKind.Told) walker.Tap("yes");
        Assert.Null(walker.State.Role);
    }

    [Theory]
    [InlineData("brenholt E5 steady, changed the indoor fan motor and the indoor board", "replace-indoor-fan-motor",
        "replace-indoor-board")]
    [InlineData("brenholt E5 steady, blower motor was replaced last month, washed the filter",
        "replace-indoor-fan-motor", "wash-filter")]
    public void Repair_TriedBefore_ExcludesWhatItCures(string text, params string[] repairs)
    {
        Walker walker = Told(text);
        walker.Tap("yes");
        Assert.Equal(repairs.Order(StringComparer.Ordinal), walker.State.Repairs.Select(tried => tried.Repair)
            .Order(StringComparer.Ordinal));
        Assert.All(walker.State.Repairs, tried => Assert.False(tried.Works));
        Assert.Equal(repairs.Length, walker.Log.OfType<RepairTriedBefore>().Count());
    }

    [Theory]
    [InlineData("brenholt P6, compressor windings 1.1, 1.1 and 1.12 ohms", "compressor-windings", 3)]
    [InlineData("brenholt b4, room thermistor 10.3k at 75F", "room-sensor-resistance", 2)]
    public void Readings_WithWhatWasMeasured_AreTaken(string text, string check, int count)
    {
        ToldThing.Measured measured =
            Assert.Single(Told(text).State.Unconfirmed.Select(item => item.Thing).OfType<ToldThing.Measured>());
        Assert.Equal(check, measured.Check);
        Assert.Equal(count, measured.Readings.Length);
    }

    [Theory]
    [InlineData("brenholt P6, filter is clean, compressor windings 1.1 and 1.2")]
    [InlineData("brenholt b4, filter is clean, room sensor should read 10k at 24C")]
    [InlineData("brenholt b4, filter is clean, room sensor 10k at 24")]
    public void Readings_NotPlainOrNotComplete_AreSaidToBeUnused(string text)
    {
        Walker walker = Told(text);
        Assert.DoesNotContain(walker.State.Unconfirmed, item => item.Thing is ToldThing.Measured);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("notice-not-used")));
    }

    // Nothing of it goes unused: the name is taken, and what stands around it tells nothing.
    [Theory]
    [InlineData("hi, I've got a tarn duo here, it blows warm air, I'm a tech")]
    [InlineData("I'm looking at a tarn duo, the display is blank, technician")]
    public void Name_WithWordsThatTellNothing_IsNotSaidToBeUnused(string text)
    {
        Walker walker = Told(text);
        Assert.Contains(walker.State.Unconfirmed, item => item.Thing is ToldThing.Unit);
        Assert.DoesNotContain(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("notice-not-used")));
    }

    [Theory]
    [InlineData("brenholt E5/H6", "E5", "H6")]
    [InlineData("brenholt shows e5 then h6", "E5", "H6")]
    [InlineData("e5 and h6 on a brenholt", "E5", "H6")]
    public void Codes_Several_AreAllTaken(string text, params string[] codes) =>
        Assert.Equal(codes, Told(text).State.Unconfirmed.Select(item => item.Thing).OfType<ToldThing.Code>()
            .Select(code => code.Shown));

    [Fact]
    public void Troubles_WithoutACommonCause_AreTakenOneAfterTheOther()
    {
        Walker walker = Told("brenholt b4 and H0, tech here");
        walker.Tap("yes");
        Assert.Equal(QuestionKind.First, walker.Question.Kind);
        walker.Tap("room-sensor-code");
        Assert.Equal("room-sensor-code", Assert.Single(walker.State.Symptoms).Symptom);
        Assert.Equal("high-pressure-code", Assert.Single(walker.State.PutOff));
        HiddenFault unit = HiddenFault.Typical("sensor-room-air");
        while (walker.Question.Kind != QuestionKind.LeftOver) unit.Answer(walker);
        walker.Tap("high-pressure-code");
        Assert.Equal("high-pressure-code", Assert.Single(walker.State.Symptoms).Symptom);
        Assert.Empty(walker.State.PutOff);
    }

    [Fact]
    public void Whole_WhereASafetyStepIsAsked_ConfirmsNoStep()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "room-sensor-code");
        Assert.Equal(QuestionKind.Access, walker.Question.Kind);
        walker.Say("all done, filter is clean, drain is clear");
        Assert.Empty(walker.Log.OfType<StepConfirmed>());
        walker.Tap("yes");
        Assert.Empty(walker.Log.OfType<StepConfirmed>());
        Assert.Equal(QuestionKind.Access, walker.Question.Kind);
    }

    [Fact]
    public void Outcomes_ShippedChecks_HaveWordings() =>
        Assert.True(
            ShippedContent.Library.Checks.Values.Count(
                page => page.Outcomes.Any(outcome => !outcome.SaidAs.IsEmpty)) >= 30);

    [Theory]
    [InlineData("Tarn Duo code H6 steady", "tarn-duo", "low-pressure-code")]
    [InlineData("the Duo shows H6", "tarn-duo", "low-pressure-code")]
    [InlineData("H6 steady on a tarn duo", "tarn-duo", "low-pressure-code")]
    [InlineData("Brenholt WS shows b4 steady", "brenholt-ws", "room-sensor-code")]
    public void Code_BesideTheNameOfTheUnit_IsTheCodeAndNotAPartOfTheName(string said, string series, string symptom)
    {
        Walker walker = Told(said);
        Assert.Equal(series, walker.State.Series);
        Assert.Equal(symptom, Assert.Single(walker.State.Symptoms).Symptom);
    }

    private static Walker Told(string text)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say(text);
        return walker;
    }

    private static IEnumerable<ToldThing.Outcome> Outcomes(string text) =>
        Told(text).State.Unconfirmed.Where(item => item.Taken).Select(item => item.Thing).OfType<ToldThing.Outcome>();

    [Theory]
    [InlineData("brenholt ws, technician, low pressure code in heating", "technician")]
    [InlineData("veldarn nord, technician, low pressure in heating", "technician")]
    public void Person_SaidBesideATrouble_IsNotAskedAgain(string words, string role)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        walker.Say(words);
        if (walker.Question.Kind == QuestionKind.Told) walker.Tap("yes");
        Assert.Equal((role, "heating"), (walker.State.Role, walker.State.Mode));
        Assert.NotEqual(QuestionKind.Role, walker.Question.Kind);
    }

    // Common practice, no source: at low pressure in heating the outdoor side is looked at, and cooling measures
    // nothing there.
    [Fact]
    public void LowPressure_InHeating_IsNotMeasuredInCooling()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("veldarn-nord", "refrigerant", "low-pressure-code");
        for (int turn = 0; turn < 60 && walker.State.ClosedHow is null && walker.State.Mode is null
            && walker.Question.Subject != "mode-at-low-pressure"; turn++)
            if (walker.Question.Kind == QuestionKind.Check) walker.Order(CommandWord.Unsure);
            else walker.MakeSafe();
        walker.Tap("heating");
        Assert.Equal("heating", walker.State.Mode);
        Assert.DoesNotContain(Asked(walker), check => check is "superheat" or "suction-pressure"
            or "high-side-pressure");
    }

    private static IEnumerable<string> Asked(Walker walker)
    {
        for (int turn = 0; turn < 60 && walker.State.ClosedHow is null; turn++)
            if (walker.Question.Kind == QuestionKind.Check)
            {
                yield return walker.Question.Subject;
                walker.Order(CommandWord.Unsure);
            }
            else if (walker.Question.Kind == QuestionKind.Access) walker.MakeSafe();
            else yield break;
    }
}
