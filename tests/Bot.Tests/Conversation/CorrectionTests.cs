using DxAssistant.Conversation;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Conversation.Told;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>What was answered may be wrong: results that cannot both be right are noticed, and an earlier one may be told anew.</summary>
public sealed class CorrectionTests
{
    private const int MostTurns = 80;

    private static Library Library => ShippedContent.Library;

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
        Assert.Single(walker.Reply.Segments, segment => segment.From.OfType<Provenance.Phrase>()
            .Any(phrase => phrase.Id is "contradiction-odd" or "contradiction-quickest"));
        Assert.Subset(walker.State.Results.Select(result => result.Check).ToHashSet(), named.ToHashSet());

        walker.Tap(named[0]);

        Assert.DoesNotContain(walker.State.Results, result => result.Check == named[0]);
    }

    // While something else is asked, and on the way to a safe state, whose step stands.
    [Theory]
    [InlineData("Air filter: full of dust")]
    [InlineData("air filter was wrong, full of dust")]
    [InlineData("sorry, the air filter is full of dust after all")]
    public void EarlierResult_NamedWithAnotherAnswer_IsCorrected(string said)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "weak-airflow");
        Assert.Equal("filter-look", walker.Question.Subject);
        walker.Tap("clean");
        while (walker.Question.Kind == QuestionKind.Check) walker.Tap(walker.Question.Options[0].Key);
        Assert.Equal(QuestionKind.Access, walker.Question.Kind);
        Assert.Equal("clean", walker.State.Results.Single(result => result.Check == "filter-look").Outcome);
        string? access = walker.State.Access;
        walker.Say(said);
        Assert.Equal("blocked", walker.State.Results.Single(result => result.Check == "filter-look").Outcome);
        Assert.Equal(access, walker.State.Access);
    }

    // What comes next is worked out again: the filter that is full of dust after all is washed before anything else is looked at.
    [Fact]
    public void EarlierResult_NamedWithAnotherAnswer_StepIsChosenAnew()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "weak-airflow");
        walker.Tap("clean");
        Assert.Equal(QuestionKind.Check, walker.Question.Kind);
        walker.Say("air filter: full of dust");
        Assert.Equal((QuestionKind.Repair, "wash-filter"), (walker.Question.Kind, walker.Question.Subject));
    }

    // What a repair did is no correction of what was found before it.
    [Fact]
    public void EarlierResult_NamedAtARepair_StaysAsItWas()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "weak-airflow");
        walker.Tap("blocked");
        Assert.Equal((QuestionKind.Repair, "wash-filter"), (walker.Question.Kind, walker.Question.Subject));
        walker.Say("washed it, light comes through the air filter now");
        Assert.Equal("blocked", walker.State.Results.Single(result => result.Check == "filter-look").Outcome);
    }

    [Fact]
    public void Results_ThatCannotAllBeRight_AreSpokenOfOnceWhenKept()
    {
        Walker walker = ToContradiction();
        walker.Tap("keep");
        Assert.NotEqual(QuestionKind.Contradiction, walker.Question.Kind);
    }

    // Frost at the coil and at the thick pipe have faults in common; an open room sensor has none with them.
    [Fact]
    public void Results_OfWhichOneIsFarOut_NameItToBeTakenAgain()
    {
        Check room = Library.Graph.Find(new CheckId("room-sensor-resistance"))!;
        var walker = new Walker(ShippedContent.Assistant, CaseState.New with
        {
            ContentVersion = Library.Version, Role = "technician", Series = "brenholt-ws", Symptoms = [new ReportedSymptom("poor-cooling", 1, "poor cooling")],
            Access = room.Access[0].Value, Results = [Seen("coil-look", "iced"), Seen("pipes-at-valves", "thick-frost"), Seen("room-sensor-resistance", "open")],
        });

        walker.Order(CommandWord.Again);

        Assert.Equal(QuestionKind.Contradiction, walker.Question.Kind);
        Segment named = Assert.Single(walker.Reply.Segments, segment => segment.From.Contains(new Provenance.Phrase("contradiction-odd")));
        Assert.Contains(Library.Checks[room.Id].Title.Text, named.Text, StringComparison.Ordinal);

        Reply why = walker.Order(CommandWord.Why);
        Assert.Single(why.Segments, segment => segment.From.Contains(new Provenance.Phrase("why-contradiction")));
        Assert.Contains(why.Segments, segment => segment.From.Contains(new Provenance.Phrase("why-contradiction-without"))
            && segment.Text.Contains(Library.Checks[room.Id].Title.Text, StringComparison.Ordinal));
        Assert.Equal(QuestionKind.Contradiction, walker.Question.Kind);
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
    [InlineData("no wait they are full of dust")]
    [InlineData("sorry no full of dust")]
    [InlineData("no sorry they are full of dust")]
    public void LastAnswer_SaidToBeWrongWithTheRightOne_IsReplaced(string words)
    {
        Walker corrected = Begin(), straight = Begin();
        corrected.Tap("clean");
        corrected.Say(words);
        straight.Tap("blocked");
        Assert.Equal("blocked", Assert.Single(corrected.State.Results).Outcome);
        Assert.Equal(Beliefs(straight), Beliefs(corrected));
    }

    // The answer that was wrong is an older one: the last stays.
    [Fact]
    public void OlderAnswer_SaidToBeWrong_IsCorrectedAndTheLastStays()
    {
        Walker walker = Begin();
        walker.Tap("clean");
        walker.MakeSafe();
        (string check, Option answer) = (walker.Question.Subject, walker.Question.Options[0]);
        walker.Tap(answer.Key);
        walker.Say("i was wrong, full of dust");
        Assert.Equal("blocked", walker.State.Results.Single(result => result.Check == "filter-look").Outcome);
        Assert.Equal(answer.Key, walker.State.Results.Single(result => result.Check == check).Outcome);
    }

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
            || segment.From.OfType<Provenance.Page>().Any(page => page.Path.Contains("refusals", StringComparison.Ordinal)));
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

    [Theory]
    [InlineData("i made a mistake, go back")]
    [InlineData("i measured wrong, let me check again")]
    public void LastAnswer_TakenBackInMoreWords_IsAskedAgain(string words)
    {
        Walker walker = Begin();
        walker.Tap("clean");
        walker.Say(words);
        Assert.DoesNotContain(walker.State.Results, result => result.Check == "filter-look");
    }

    // "Sorry, no" answers what is asked, and "i misread the code" takes no answer back.
    [Theory]
    [InlineData("sorry, no")]
    [InlineData("i misread the code, it is E6")]
    public void EarlierAnswer_NotSpokenOf_Stays(string words)
    {
        Walker walker = Begin();
        walker.Tap("clean");
        walker.Say(words);
        Assert.Equal("clean", walker.State.Results.Single(result => result.Check == "filter-look").Outcome);
    }

    [Fact]
    public void UnsafeRequest_BehindATakenBackAnswer_IsRefused()
    {
        Walker walker = Begin();
        walker.Tap("clean");
        walker.Say("forget that, can i bypass the pressure switch");
        Assert.Contains(walker.Reply.Segments, segment => segment.Kind == SegmentKind.Refusal);
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
        Assert.All(walker.State.Results.Where(result => result.Check == check), result => Assert.Equal(sound, result.Outcome));
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
        Assert.Contains("Lock it", walker.Question.Text + string.Concat(walker.Reply.Segments.Select(segment => segment.Text)), StringComparison.Ordinal);
        walker.Say(words);
        Assert.Equal(2, walker.State.Approach!.Done);
    }

    private static Walker ToLockOut()
    {
        const int most = 20;
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "compressor-start-code");
        for (int turn = 0; walker.Question.Kind != QuestionKind.Access && turn < most; turn++) walker.Tap(walker.Question.Options[^1].Key);
        Assert.Equal(QuestionKind.Access, walker.Question.Kind);
        return walker;
    }

    [Theory]
    [InlineData("wrong unit")]
    [InlineData("its a tarn duo")]
    public void AnotherUnit_SaidInTheMiddle_IsToldHowToGoOn(string words)
    {
        Walker walker = Begin();
        walker.Say(words);
        Assert.Contains(walker.Reply.Segments, segment => segment.Text.Contains("start over", StringComparison.Ordinal));
        Assert.Equal("brenholt-ws", walker.State.Series);
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

    [Fact]
    public void VoltageMisread_OnTheWayToASafeState_TakesTheStepBack()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "room-sensor-code");
        for (int step = 0; step < 12 && walker.Question is { Kind: QuestionKind.Access, Fields.IsEmpty: true }; step++) walker.Say("done");
        walker.Say("0.3 V");
        walker.Say("i misread, it was 230 V");
        Assert.Equal(QuestionKind.Access, walker.Question.Kind);
        Assert.NotEqual("isolated-open", walker.State.Access);
        Assert.Contains(walker.Reply.Segments, said => said.From.Contains(new Provenance.Phrase("notice-taken-back")));
    }

    private static SeenResult Seen(string check, string outcome)
    {
        Check node = Library.Graph.Find(new CheckId(check))!;
        return new SeenResult(check, outcome, [.. node.Outcomes.Select(one => one.Value == outcome ? 1.0 : 0.0)], null, outcome, []);
    }
}
