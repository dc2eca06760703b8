using DxAssistant.Conversation;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>Results that cannot all be right are noticed, and one of them is taken again.</summary>
public sealed class ContradictionTests
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
        Segment told = Assert.Single(walker.Reply.Segments,
            segment => segment.Text.StartsWith("No one fault explains", StringComparison.Ordinal));
        Assert.All(walker.State.Results.Where(result => named.Contains(result.Check)),
            result => Assert.Contains(result.Words, told.Text, StringComparison.Ordinal));
        Assert.Single(walker.Reply.Segments, segment => segment.From.OfType<Provenance.Phrase>()
            .Any(phrase => phrase.Id is "contradiction-odd" or "contradiction-quickest"));
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

    // Frost at the coil and at the thick pipe have faults in common; an open room sensor has none with them.
    [Fact]
    public void Results_OfWhichOneIsFarOut_NameItToBeTakenAgain()
    {
        Check room = Library.Graph.Find(new CheckId("room-sensor-resistance"))!;
        var walker = new Walker(ShippedContent.Assistant, CaseState.New with
        {
            ContentVersion = Library.Version, Role = "technician", Series = "brenholt-ws",
            Symptoms = [new ReportedSymptom("poor-cooling", 1, "poor cooling")],
            Access = room.Access[0].Value,
            Results = [Seen("coil-look", "iced"), Seen("pipes-at-valves", "thick-frost"),
                Seen("room-sensor-resistance", "open")],
        });

        walker.Order(CommandWord.Again);

        Assert.Equal(QuestionKind.Contradiction, walker.Question.Kind);
        Segment named = Assert.Single(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("contradiction-odd")));
        Assert.Contains(Library.Checks[room.Id].Title.Text, named.Text, StringComparison.Ordinal);

        Reply why = walker.Order(CommandWord.Why);
        Assert.Single(why.Segments, segment => segment.From.Contains(new Provenance.Phrase("why-contradiction")));
        Assert.Contains(why.Segments, segment =>
            segment.From.Contains(new Provenance.Phrase("why-contradiction-without"))
                && segment.Text.Contains(Library.Checks[room.Id].Title.Text, StringComparison.Ordinal));
        Assert.Equal(QuestionKind.Contradiction, walker.Question.Kind);
    }

    // At each check the answer that what is known makes least likely: sooner or later no fault explains them all.
    private static Walker ToContradiction()
    {
        Walker walker = Begin();
        HiddenFault other = HiddenFault.Typical("indoor-fan-motor-failed");
        for (int turn = 0; turn < MostTurns && walker.State.ClosedHow is null
            && walker.Question.Kind != QuestionKind.Contradiction; turn++)
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

    private static SeenResult Seen(string check, string outcome)
    {
        Check node = Library.Graph.Find(new CheckId(check))!;
        return new SeenResult(check, outcome, [.. node.Outcomes.Select(one => one.Value == outcome ? 1.0 : 0.0)], null,
            outcome, []);
    }

    private static Walker Begin()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "indoor-fan-fault");
        Assert.Equal("filter-look", walker.Question.Subject);
        return walker;
    }
}
