using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Conversation.Told;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>What few words mean where something is asked: that all is well, that it is done, or nothing.</summary>
public sealed class FewWordsTests
{
    [Theory]
    [InlineData("no the filters are clean", "clean")]
    [InlineData("no the filters are dirty", "blocked")]
    public void No_BeforeAWholeSentence_DoesNotTurnItRound(string words, string outcome)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "owner", "poor-cooling");
        walker.Tap("none");
        walker.Say(words);
        Assert.Contains(walker.State.Unconfirmed, item => item.Thing is ToldThing.Outcome told && told.Seen == outcome);
    }

    [Theory]
    [InlineData("looks sound")]
    [InlineData("all fine")]
    [InlineData("yeah")]
    [InlineData("yes all ok")]
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

    [Theory]
    [InlineData("no nothing like that")]
    [InlineData("nope")]
    [InlineData("nothing")]
    public void DangerSigns_Denied_AreAnswered(string words)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "owner", "poor-cooling");
        walker.Say(words);
        Assert.Equal("none", Assert.Single(walker.State.Results).Outcome);
    }

    // A few words of what is asked are no request, whatever they are like.
    [Theory]
    [InlineData("outdoor-fan-plug", "plug ok")]
    [InlineData("breaker-when", "it has not tripped")]
    [InlineData("filter-look", "no change")]
    [InlineData("filter-look", "stays")]
    public void FewWords_OfWhatIsAsked_AreNotRefused(string check, string words)
    {
        Walker walker = Asked(check);
        walker.Say(words);
        Assert.DoesNotContain(walker.Reply.Segments, segment => segment.Kind == SegmentKind.Refusal
            || segment.From.OfType<Provenance.Page>()
                .Any(page => page.Path.Contains("refusals", StringComparison.Ordinal)));
    }

    private static Walker Asked(string check)
    {
        CheckPage page = ShippedContent.Library.Checks[new CheckId(check)];
        return new Walker(ShippedContent.Assistant, Begin().State with
        {
            Question = new OpenQuestion("q", QuestionKind.Check, check, page.Ask.Text, [],
                [.. page.Outcomes.Select(outcome => new Option(outcome.Id.Value, outcome.Answer.Text))], [], []),
        });
    }

    // What is missing is no fault of it.
    [Theory]
    [InlineData("no filter")]
    [InlineData("no air filter")]
    public void Thing_SaidToBeMissing_IsNotFoundFaulty(string words)
    {
        Walker walker = Begin();
        walker.Say(words);
        Assert.DoesNotContain(walker.State.Results, result => result.Outcome == "blocked");
    }

    // "None" of a fault is no fault; "ok" is no yes to "signs or damage".
    [Theory]
    [InlineData("power-terminals", "tight", "nothing unusual")]
    [InlineData("animal-signs", "none", "ok, all fine")]
    public void SoundWords_NeverChooseAFault(string check, string sound, string words)
    {
        Walker walker = Asked(check);
        walker.Say(words);
        Assert.All(walker.State.Results.Where(result => result.Check == check),
            result => Assert.Equal(sound, result.Outcome));
    }

    // "Locked" is an answer where something is to be locked, and nowhere else.
    [Fact]
    public void Locked_AtAnotherStep_IsNotDone()
    {
        Walker walker = ToLockOut();
        walker.Say("its locked");
        Assert.Equal(0, walker.State.Approach?.Done ?? 0);
        walker.Say("next");
        Assert.Equal(0, walker.State.Approach?.Done ?? 0);
    }

    [Theory]
    [InlineData("its locked")]
    [InlineData("ok done next")]
    public void LockOut_SaidToBeDone_IsDone(string words)
    {
        Walker walker = ToLockOut();
        walker.Say("done");
        Assert.Contains("Lock it", walker.Question.Text
            + string.Concat(walker.Reply.Segments.Select(segment => segment.Text)), StringComparison.Ordinal);
        walker.Say(words);
        Assert.Equal(2, walker.State.Approach!.Done);
    }

    private static Walker ToLockOut()
    {
        const int most = 20;
        Walker walker =
            new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "compressor-start-code");
        for (int turn = 0; walker.Question.Kind != QuestionKind.Access && turn < most; turn++)
            walker.Tap(walker.Question.Options[^1].Key);
        Assert.Equal(QuestionKind.Access, walker.Question.Kind);
        return walker;
    }

    private static Walker Begin()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "indoor-fan-fault");
        Assert.Equal("filter-look", walker.Question.Subject);
        return walker;
    }
}
