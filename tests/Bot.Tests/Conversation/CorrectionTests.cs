using DxAssistant.Conversation;
using DxAssistant.Conversation.Replies;
using DxAssistant.Graph.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>What was answered may be wrong: results that cannot both be right are noticed, and an earlier one may be told anew.</summary>
public sealed class CorrectionTests
{
    private const int MostTurns = 80;

    [Fact]
    public void Results_ThatCannotAllBeRight_AreNamedAndOneIsTakenAgain()
    {
        Walker walker = ToContradiction();
        Assert.Equal(QuestionKind.Contradiction, walker.Question.Kind);
        Assert.Contains(walker.Reply.Segments, segment => segment.From.OfType<Provenance.Phrase>()
            .Any(phrase => phrase.Id is "contradiction" or "contradiction-alone"));
        string[] named = [.. walker.Question.Options.Select(option => option.Key).Where(key => key != "keep")];
        Assert.NotEmpty(named);
        Segment told = Assert.Single(walker.Reply.Segments, segment => segment.Text.StartsWith("No one fault explains", StringComparison.Ordinal));
        Assert.All(walker.State.Results.Where(result => named.Contains(result.Check)),
            result => Assert.Contains(result.Words, told.Text, StringComparison.Ordinal));
        Assert.Subset(walker.State.Results.Select(result => result.Check).ToHashSet(), named.ToHashSet());

        walker.Tap(named[0]);

        Assert.DoesNotContain(walker.State.Results, result => result.Check == named[0]);
    }

    [Fact]
    public void Results_ThatCannotAllBeRight_AreSpokenOfOnceWhenKept()
    {
        Walker walker = ToContradiction();
        walker.Tap("keep");
        Assert.NotEqual(QuestionKind.Contradiction, walker.Question.Kind);
    }

    [Theory]
    [InlineData("filter is dirty")]
    [InlineData("actually the filter is dirty")]
    [InlineData("sorry, my mistake, the filter is dirty after all")]
    public void EarlierAnswer_ToldAnew_CountsAsIfItHadBeenToldSoAtFirst(string words)
    {
        Walker corrected = Begin(), straight = Begin();
        corrected.Tap("clean");
        corrected.Say(words);
        corrected.Tap("yes");
        straight.Tap("blocked");

        Assert.Equal("blocked", Assert.Single(corrected.State.Results).Outcome);
        Assert.Equal(Beliefs(straight), Beliefs(corrected));
        Assert.Equal(straight.Question.Subject, corrected.Question.Subject);
    }

    [Theory]
    [InlineData("I measured wrong")]
    [InlineData("that reading was wrong")]
    [InlineData("sorry, i misread it")]
    public void LastAnswer_SaidToBeWrong_IsTakenBackAndAskedAgain(string words)
    {
        Walker walker = Begin();
        walker.Tap("clean");
        walker.Say(words);
        Assert.Empty(walker.State.Results);
        Assert.Equal("filter-look", walker.Question.Subject);
    }

    [Theory]
    [InlineData("I made a mistake, no, they are full of dust")]
    [InlineData("that was wrong, full of dust")]
    public void LastAnswer_SaidToBeWrongWithTheRightOne_IsReplaced(string words)
    {
        Walker corrected = Begin(), straight = Begin();
        corrected.Tap("clean");
        corrected.Say(words);
        straight.Tap("blocked");
        Assert.Equal("blocked", Assert.Single(corrected.State.Results).Outcome);
        Assert.Equal(Beliefs(straight), Beliefs(corrected));
    }

    [Theory]
    [InlineData("looks sound")]
    [InlineData("all fine")]
    public void VisualCheck_SaidToBeSound_IsWhatASoundUnitShows(string words)
    {
        Walker walker = Begin();
        walker.Say(words);
        Assert.Equal("clean", Assert.Single(walker.State.Results).Outcome);
    }

    [Fact]
    public void DangerSigns_SaidToBeFine_AreAskedForAgain()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "owner", "poor-cooling");
        Assert.Equal("danger-signs", walker.Question.Subject);
        walker.Say("looks sound");
        Assert.Equal("danger-signs", walker.Question.Subject);
        Assert.Empty(walker.State.Results);
    }

    private static Walker Begin()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "indoor-fan-fault");
        Assert.Equal("filter-look", walker.Question.Subject);
        return walker;
    }

    private static IEnumerable<(string, double)> Beliefs(Walker walker) =>
        new CaseView(ShippedContent.Library, walker.State).Lines().Select(line => (line.Fault, line.Probability));

    // At each check the answer that what is known makes least likely: sooner or later no fault explains them all.
    private static Walker ToContradiction()
    {
        Walker walker = Begin();
        HiddenFault other = HiddenFault.Typical("indoor-fan-motor-failed");
        for (int turn = 0; turn < MostTurns && walker.State.ClosedHow is null && walker.Question.Kind != QuestionKind.Contradiction; turn++)
            if (walker.Question.Kind == QuestionKind.Check) walker.Tap(LeastLikely(walker));
            else other.Answer(walker);
        return walker;
    }

    private static string LeastLikely(Walker walker)
    {
        Check check = ShippedContent.Library.Graph.Find(new CheckId(walker.Question.Subject))!;
        return new CaseView(ShippedContent.Library, walker.State).Belief.Foresee(check)
            .MinBy(seen => seen.Probability)!.Outcome.Value;
    }
}
