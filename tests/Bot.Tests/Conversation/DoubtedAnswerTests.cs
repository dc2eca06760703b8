using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>Who is not sure of an answer is believed as far as the pages say, and told so.</summary>
public sealed class DoubtedAnswerTests
{
    [Theory]
    [InlineData("I think light comes through", "clean")]
    [InlineData("maybe yes", "clean")]
    [InlineData("i think so", "clean")]
    [InlineData("probably full of dust", "blocked")]
    [InlineData("it seems to be full of dust", "blocked")]
    [InlineData("i dont think so", "blocked")]
    [InlineData("probably not", "blocked")]
    [InlineData("i suppose so", "clean")]
    public void Answer_WithDoubt_IsBelievedInPart(string said, string outcome)
    {
        Walker walker = AtFilter();
        walker.Say(said);
        SeenResult result = Assert.Single(walker.State.Results);
        Assert.Equal(("filter-look", outcome), (result.Check, result.Outcome));
        // So far as it is trusted it is the answer, and for the rest it says as much for either.
        double trusted = ShippedContent.Library.Settings.DoubtTrusted;
        Assert.Equal(trusted + (1 - trusted) / 2, result.Weights.Max(), 1e-12);
        Assert.Equal(1, result.Weights.Sum(), 1e-12);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("understood-answer-doubted")));
        Assert.EndsWith("(not certain)", result.Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("light comes through", "clean")]
    [InlineData("full of dust", "blocked")]
    [InlineData("yes", "clean")]
    public void Answer_WithoutDoubt_IsBelieved(string said, string outcome)
    {
        Walker walker = AtFilter();
        walker.Say(said);
        Assert.Equal(outcome, Assert.Single(walker.State.Results).Outcome);
        Assert.Equal(1, walker.State.Results[0].Weights.Max());
    }

    [Fact]
    public void Answer_WithDoubt_ChangesTheBeliefLess()
    {
        Walker sure = AtFilter(), unsure = AtFilter();
        sure.Say("full of dust");
        unsure.Say("maybe full of dust");
        double before = Blocked(AtFilter()), doubted = Blocked(unsure), told = Blocked(sure);
        Assert.True(before < doubted && doubted < told, $"{before} {doubted} {told}");
    }

    [Fact]
    public void Answer_WithDoubt_InSpanish_IsBelievedInPart()
    {
        Walker walker = AtFilter();
        walker.Say("español");
        walker.Say("creo que sí");
        Assert.Equal("clean", Assert.Single(walker.State.Results).Outcome);
        Assert.True(walker.State.Results[0].Weights.Max() < 1);
    }

    // Where danger is asked for, and where nothing goes on without it, there is no half answer.
    [Theory]
    [InlineData("poor-cooling", "owner", "danger-signs", "i think none of these")]
    [InlineData("shock-from-casing", "technician", "tingle-elsewhere", "maybe only the unit")]
    [InlineData("shock-from-casing", "technician", "tingle-elsewhere", "i think only the unit tingles")]
    public void Answer_WithDoubt_WhereDangerIsAskedFor_IsNoHalfOne(string symptom, string role, string check,
        string said)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", role, symptom);
        Assert.Equal(check, walker.Question.Subject);
        walker.Say(said);
        Assert.DoesNotContain(walker.State.Results, result => result.Check == check);
        Assert.Equal((QuestionKind.Check, check), (walker.Question.Kind, walker.Question.Subject));
    }

    // Who looked again says so by the name of the check; who is still not sure is believed in part.
    [Theory]
    [InlineData("air filter: yes, light comes through", "clean", true)]
    [InlineData("air filter: I think full of dust", "blocked", false)]
    public void DoubtedAnswer_NamedAgain_IsAsSureAsItIsSaid(string said, string outcome, bool isSure)
    {
        Walker walker = AtFilter();
        walker.Say("maybe yes");
        walker.Say(said);
        SeenResult result = walker.State.Results.Single(result => result.Check == "filter-look");
        Assert.Equal((outcome, isSure), (result.Outcome, result.Weights.Max() == 1));
    }

    private static Walker AtFilter()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "weak-airflow");
        Assert.Equal((QuestionKind.Check, "filter-look"), (walker.Question.Kind, walker.Question.Subject));
        return walker;
    }

    private static double Blocked(Walker walker) =>
        new CaseView(ShippedContent.Library, walker.State).Belief.ProbabilityOf(new FaultId("filter-blocked"));
}
