using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>
/// No walk ends without a repair while a check that was left out could still lead to one: it is named once more.
/// </summary>
public sealed class LeftOutTests
{
    // Whoever is not sure of anything, and looks again when it is named.
    [Fact]
    public void End_EverythingLeftOut_WhatIsNamedLeadsToTheRepair()
    {
        Walker walker = AtTheEnd();
        while (walker.State.ClosedHow is null)
        {
            string named = walker.Question.Kind == QuestionKind.LeftOut ? walker.Question.Options[0].Key : "";
            Answer(walker);
            if (walker.Question.Kind == QuestionKind.Access) walker.MakeSafe();
            if (named.Length > 0) Unit.Answer(walker);
        }

        Assert.Equal("repaired", walker.State.ClosedHow);
    }

    [Theory]
    [InlineData("no, end here")]
    [InlineData("no")]
    [InlineData("can't get to it")]
    public void End_StillLeftOut_Ends(string said)
    {
        Walker walker = AtTheEnd();
        walker.Say(said);
        Assert.NotNull(walker.State.ClosedHow);
        Assert.Single(walker.Log.OfType<ProofGapTold>());
    }

    [Fact]
    public void End_NamedAndLeftOutAgain_IsNotNamedOnceMore()
    {
        Walker walker = AtTheEnd();
        HashSet<string> taken = [];
        while (walker.State.ClosedHow is null)
        {
            if (walker.Question.Kind == QuestionKind.LeftOut) Assert.True(taken.Add(walker.Question.Options[0].Key));
            Answer(walker);
        }

        Assert.NotEmpty(taken);
    }

    [Fact]
    public void End_TakenBack_IsAskedAgain()
    {
        Walker walker = AtTheEnd();
        walker.Tap("end");
        walker.Order(CommandWord.Back);
        Assert.Equal(QuestionKind.LeftOut, walker.Question.Kind);
    }

    private static HiddenFault Unit => HiddenFault.Typical("power-module-shorted");

    private static Walker AtTheEnd()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "inverter-code");
        for (int turn = 0; walker.State.ClosedHow is null && turn < 200
            && walker.Question.Kind != QuestionKind.LeftOut; turn++) Answer(walker);
        Assert.True(walker.Question.Kind == QuestionKind.LeftOut, Told(walker));
        return walker;
    }

    private static void Answer(Walker walker)
    {
        if (walker.Question.Kind == QuestionKind.Check) walker.Order(CommandWord.Unsure);
        else if (walker.Question.Kind == QuestionKind.Proof) walker.Tap("without");
        else Unit.Answer(walker);
    }

    private static string Told(Walker walker) =>
        string.Join(" → ", walker.Log.OfType<StepChosen>().Select(chosen => chosen.Id)) + ": " + walker.State.ClosedHow;
}
