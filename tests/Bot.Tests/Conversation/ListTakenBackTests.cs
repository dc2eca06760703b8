using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>An answer that only leads from one list to the next is what "back" takes back first.</summary>
public sealed class ListTakenBackTests
{
    private readonly Walker walker = new(ShippedContent.Assistant);

    [Fact]
    public void Back_AfterAClarifyingAnswer_AsksTheClarifyingQuestionAgain()
    {
        OpenQuestion asked = Clarifying();
        walker.Tap(asked.Options[0].Key);
        Assert.Equal(QuestionKind.Symptom, walker.Question.Kind);
        walker.Order(CommandWord.Back);
        Assert.Equal((asked.Text, "technician"), (walker.Question.Text, walker.State.Role));
        Assert.Equal(asked.Options, walker.Question.Options);
    }

    [Fact]
    public void Back_AfterShowMeAll_AsksTheClarifyingQuestionAgain()
    {
        OpenQuestion asked = Clarifying();
        walker.Tap(asked.Options[^1].Key);
        walker.Say("back");
        Assert.Equal(asked.Options, walker.Question.Options);
    }

    [Fact]
    public void Back_AfterNoneOfThese_ShowsTheListAgain()
    {
        OpenQuestion asked = Clarifying();
        walker.Tap(asked.Options[0].Key);
        OpenQuestion list = walker.Question;
        walker.Tap("none");
        Assert.Equal(QuestionKind.Complaint, walker.Question.Kind);
        walker.Order(CommandWord.Back);
        Assert.Equal(list.Options, walker.Question.Options);
    }

    [Fact]
    public void BackTwice_AfterNoneOfThese_AsksTheClarifyingQuestionAgain()
    {
        OpenQuestion asked = Clarifying();
        walker.Tap(asked.Options[0].Key);
        walker.Tap("none");
        walker.Order(CommandWord.Back);
        walker.Order(CommandWord.Back);
        Assert.Equal(asked.Options, walker.Question.Options);
    }

    [Fact]
    public void BackTwice_AfterAClarifyingAnswer_TakesBackTheStepBeforeIt()
    {
        OpenQuestion asked = Clarifying();
        walker.Tap(asked.Options[0].Key);
        walker.Order(CommandWord.Back);
        walker.Order(CommandWord.Back);
        Assert.Null(walker.State.Role);
    }

    [Fact]
    public void Back_AfterATroubleIsChosen_ShowsTheListItWasChosenFrom()
    {
        OpenQuestion asked = Clarifying();
        walker.Tap(asked.Options[0].Key);
        OpenQuestion list = walker.Question;
        walker.Tap(list.Options[0].Key);
        walker.Order(CommandWord.Back);
        Assert.Equal(list.Options, walker.Question.Options);
        walker.Order(CommandWord.Back);
        Assert.Equal(asked.Options, walker.Question.Options);
    }

    private OpenQuestion Clarifying()
    {
        walker.Say("brenholt");
        walker.Say("technician");
        walker.Say("it does not work");
        Assert.Equal(QuestionKind.Symptom, walker.Question.Kind);
        return walker.Question;
    }
}
