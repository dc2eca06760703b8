using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Graph.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>A trouble told with "maybe" leads to no part and to no end before it is asked about once more.</summary>
public sealed class DoubtTests
{
    [Fact]
    public void Maybe_LeadsAstray_IsAskedAboutAndTakenOff()
    {
        Walker walker = AtTheDoubt();
        walker.Tap("no");
        Assert.Equal("indoor-fan-fault", Assert.Single(walker.State.Symptoms).Symptom);
    }

    [Fact]
    public void Maybe_IsThere_CountsInFull()
    {
        Walker walker = AtTheDoubt();
        walker.Say("yes");
        Assert.All(walker.State.Symptoms, told => Assert.Equal(1, told.Confidence));
    }

    [Fact]
    public void Maybe_CannotBeTold_IsNotAskedAgain()
    {
        Walker walker = AtTheDoubt();
        walker.Tap("unknown");
        WalkRecord walk = Unit.Walk(walker);
        Assert.Single(walker.Log.OfType<DoubtSettled>());
        Assert.NotNull(walk.End.ClosedHow);
    }

    private static HiddenFault Unit => HiddenFault.Typical("undercharge-leak");

    private static Walker AtTheDoubt()
    {
        Walker walker = new(ShippedContent.Assistant);
        walker.Say($"{Title("indoor-fan-fault")}. maybe {Title("poor-cooling")}");
        walker.Tap("veldarn-nord");
        if (walker.Question.Kind == QuestionKind.Told) walker.Tap("yes");
        if (walker.Question.Kind == QuestionKind.Role) walker.Tap("refrigerant");
        for (int turn = 0; walker.State.ClosedHow is null && turn < 200
            && walker.Question.Kind != QuestionKind.Doubt; turn++) Unit.Answer(walker);
        Assert.True(walker.Question is { Kind: QuestionKind.Doubt, Subject: "poor-cooling" }, Told(walker));
        return walker;
    }

    private static string Title(string symptom) => ShippedContent.Library.Symptoms[new SymptomId(symptom)].Title.Text;

    private static string Told(Walker walker) =>
        string.Join(" → ", walker.Log.OfType<StepChosen>().Select(chosen => chosen.Id)) + ": " + walker.State.ClosedHow;
}
