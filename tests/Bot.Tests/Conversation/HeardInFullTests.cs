using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Told;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>
/// What is told beside a complaint is entered, or said to be not used: nothing is dropped in silence.
/// </summary>
public sealed class HeardInFullTests
{
    [Theory]
    [InlineData("superheat is way high", "superheat", "high")]
    [InlineData("superheat is really high", "superheat", "high")]
    [InlineData("SH far too low", "superheat", "low")]
    [InlineData("subcooling is low", "subcooling", "low")]
    [InlineData("subcool sky high", "subcooling", "high")]
    [InlineData("sc is low", "subcooling", "low")]
    [InlineData("head pressure is extremely high", "high-side-pressure", "high")]
    [InlineData("suction pressure is way too low", "suction-pressure", "low")]
    public void FirstMessage_FoundOnGauges_IsAnOutcomeToConfirm(string said, string check, string outcome)
    {
        Walker walker = Told($"ostvik duct, technician, not cooling well, {said}");
        Assert.Contains(walker.State.Unconfirmed, item => item.Thing == new ToldThing.Outcome(check, outcome, false));
        walker.Say("yes");
        Assert.Equal(outcome, Assert.Single(walker.State.Results).Outcome);
    }

    // Common practice, no source: who reads a gauge in bar reads Celsius, who reads it in psi Fahrenheit.
    [Theory]
    [InlineData("ostvik duct", "head 42 bar at 30 outside", 30)]
    [InlineData("brenholt", "high side 42 bar, 30 outside", 30)]
    [InlineData("tarn duo", "head pressure 42 bar, outdoors 30", 30)]
    [InlineData("brenholt", "high side 600 psi, 86 outside", 30)]
    public void FirstMessage_PressureWithABareTemperature_IsAReading(string unit, string said, double celsius)
    {
        Walker walker = Told($"{unit}, technician, not cooling well, {said}");
        ToldThing.Measured measured =
            Assert.Single(walker.State.Unconfirmed.Select(item => item.Thing).OfType<ToldThing.Measured>());
        Assert.Equal("high-side-pressure", measured.Check);
        Assert.Equal(celsius, measured.Readings.Single(reading => reading.Label == "Outdoor air").Value, 0.01);
    }

    [Theory]
    [InlineData("not vacuumed")]
    [InlineData("they never pulled a vacuum")]
    [InlineData("air in the system")]
    [InlineData("head 42 bar")]
    public void FirstMessage_WhatNoCheckTells_IsSaidToBeNotUsed(string said)
    {
        Walker walker = Told($"ostvik duct, technician, not cooling well, {said}");
        Assert.Contains(walker.Reply.Segments, segment => Says(segment, "notice-not-used")
            && segment.Text.Contains(said, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("they never pulled a vacuum")]
    [InlineData("it was not vacuumed")]
    [InlineData("there is air in the system")]
    [InlineData("nobody evacuated it after the leak repair")]
    public void Step_FaultToldInsteadOfAnAnswer_IsNamedAndNotUsed(string said)
    {
        Walker walker = AtFilter();
        var before = walker.State.Results;
        walker.Say(said);
        Assert.Contains(walker.Reply.Segments, segment => Says(segment, "notice-suspect"));
        Assert.Equal(("filter-look", before.Length), (walker.Question.Subject, walker.State.Results.Length));
    }

    [Theory]
    [InlineData("E5 flashing", "it also leaks water")]
    [InlineData("E5 flashing", "water drips from the indoor unit")]
    [InlineData("E5 flashing", "and it is noisy outside")]
    public void Code_ThenAComplaintBeforeTheUnit_BothStand(string code, string said)
    {
        Walker walker = Told(code);
        walker.Say(said);
        if (walker.Question.Kind == QuestionKind.Symptom) walker.Tap(walker.Question.Options[0].Key);
        Assert.NotNull(walker.State.Code);
        Assert.Single(walker.State.Symptoms);
        walker.Say("brenholt");
        Assert.Equal(2, walker.State.Symptoms.Length);
    }

    [Theory]
    [InlineData("not cooling well", "it also leaks water")]
    [InlineData("no heat", "water drips from the indoor unit too")]
    [InlineData("it leaks water", "and the remote does nothing")]
    public void Complaint_ThenAnotherBeforeTheUnit_BothStand(string first, string second)
    {
        Walker walker = Told(first);
        Assert.Equal(QuestionKind.Series, walker.Question.Kind);
        walker.Say(second);
        Assert.Equal((QuestionKind.Series, 2), (walker.Question.Kind, walker.State.Symptoms.Length));
    }

    [Fact]
    public void Complaint_AThirdWhileTheSecondIsAskedAbout_BothWaitToBeConfirmed()
    {
        Walker walker = AtFilter();
        walker.Say("it also leaks water");
        Assert.Equal(QuestionKind.Symptom, walker.Question.Kind);
        walker.Say("the remote does nothing");
        Assert.Equal(QuestionKind.Told, walker.Question.Kind);
        walker.Say("yes");
        Assert.Equal(3, walker.State.Symptoms.Length);
    }

    [Fact]
    public void Back_AfterAChoiceOfTroubles_ListStandsAgain()
    {
        Walker walker = Told("it makes a noise");
        Assert.Equal(QuestionKind.Symptom, walker.Question.Kind);
        OpenQuestion list = walker.Question;
        walker.Tap(list.Options[0].Key);
        while (walker.Question.Kind == QuestionKind.Symptom) walker.Tap((list = walker.Question).Options[0].Key);
        walker.Say("back");
        Assert.Equal((list.Kind, list.Text), (walker.Question.Kind, walker.Question.Text));
        Assert.Equal(list.Options.Select(option => option.Key), walker.Question.Options.Select(option => option.Key));
    }

    private static Walker Told(string said)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new DxAssistant.Conversation.Messages.MessageBody.Opening());
        walker.Say(said);
        return walker;
    }

    private static Walker AtFilter()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "weak-airflow");
        Assert.Equal("filter-look", walker.Question.Subject);
        return walker;
    }

    private static bool Says(Segment segment, string phrase) => segment.From.Contains(new Provenance.Phrase(phrase));
}
