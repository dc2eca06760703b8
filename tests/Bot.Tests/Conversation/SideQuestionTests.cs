using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Understanding;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>
/// People ask back. They get an answer from the pages, nothing happens to the case, and the question stays open.
/// </summary>
public sealed class SideQuestionTests
{
    [Theory]
    [InlineData("where is the filter", "air-filter")]
    [InlineData("where's the filter?", "air-filter")]
    [InlineData("what is a breaker", "breaker")]
    [InlineData("what do you mean by louver", "louver")]
    [InlineData("what is the outdoor unit", "outdoor-unit")]
    public void AskedWhatAWordMeans_ThePageOfTheWordAnswers(string words, string term)
    {
        Walker walker = AtCheck("owner");
        Reply reply = Aside(walker, words);
        Assert.Equal(ShippedContent.Library.Terms[term].Meaning.Select(passage => passage.Text), Said(reply));
        Assert.All(reply.Segments, segment => Assert.NotEmpty(segment.From));
    }

    [Fact]
    public void AskedHow_TheWholeStepIsSaidAgain()
    {
        Walker walker = AtCheck("technician");
        CheckId check = new(walker.Question.Subject);
        Reply reply = Aside(walker, "how do i do that");
        Assert.Superset(ShippedContent.Library.Checks[check].How.Select(step => step.Text)
            .ToHashSet(), reply.Segments.Select(segment => segment.Text).ToHashSet());
    }

    [Theory]
    [InlineData("how long does that take", "answer-step-minutes")]
    [InlineData("how long will it take", "answer-minutes-on")]
    [InlineData("what does it cost", "answer-cost")]
    [InlineData("how much is it to fix", "answer-cost")]
    [InlineData("is it dangerous?", "answer-danger")]
    public void AskedTimePriceOrDanger_APhraseAnswers(string words, string phrase)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "unit-dead");
        while (!HasCautions(walker)) HiddenFault.Typical("indoor-board-failed").Answer(walker);
        Assert.Contains(Aside(walker, words).Segments, segment => segment.From.Contains(new Provenance.Phrase(phrase)));
    }

    [Fact]
    public void AskedIsItDangerous_TheCautionsOfTheStepAreSaid()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "unit-dead");
        while (!HasCautions(walker)) HiddenFault.Typical("indoor-board-failed").Answer(walker);
        string[] dangers = [.. ShippedContent.Library.Checks[new CheckId(walker.Question.Subject)].Cautions.Select(
            caution => caution.Danger.Text)];
        Assert.Subset(Aside(walker, "is that safe").Segments.Where(segment => segment.Kind == SegmentKind.Caution)
            .Select(segment => segment.Text).ToHashSet(), dangers.ToHashSet());
    }

    [Fact]
    public void AskedHowLong_Owner_IsNotToldTheMinutesOfAVisit()
    {
        Reply reply = Aside(AtCheck("owner"), "how long will it take");
        Assert.DoesNotContain(reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("answer-minutes-on")));
    }

    [Theory]
    [InlineData("how much is it supposed to draw")]
    [InlineData("how do i bypass the float switch")]
    [InlineData("where the pipes come out")]
    [InlineData("how come it shows b4 now")]
    [InlineData("where it should be 10k it reads 2k at 25C")]
    [InlineData("is it safe to repair it")]
    public void OtherWords_AreNotTakenForThem(string words)
    {
        Walker walker = AtCheck("owner");
        string step = walker.Reply.Segments.First(segment => segment.Kind == SegmentKind.Instruction).Text;
        Reply reply = walker.Say(words);
        Assert.DoesNotContain(reply.Segments, segment => segment.Text == step);
        Assert.DoesNotContain(reply.Segments, segment => segment.From.OfType<Provenance.Phrase>()
            .Any(phrase => phrase.Id.StartsWith("answer-", StringComparison.Ordinal)));
        Assert.DoesNotContain(reply.Segments,
            segment => ShippedContent.Library.Terms.Values.Any(
                term => term.Meaning.Any(passage => passage.Text == segment.Text)));
    }

    [Theory]
    [InlineData("tarda mucho en enfriar")]
    [InlineData("how long it takes to cool the room is ridiculous")]
    public void FirstWords_ThatComplain_AreHeardAsAComplaint(string words)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        Assert.DoesNotContain(walker.Say(words).Segments,
            segment => segment.From.Contains(new Provenance.Phrase("answer-how-long")));
    }

    [Theory]
    [InlineData("")]
    [InlineData("es")]
    public void Terms_EachWording_StandsOnOnePageOnly(string language)
    {
        Library library = language.Length == 0 ? ShippedContent.Library : ShippedContent.Library.Translations[language];
        Assert.All(
            library.Terms.Values.SelectMany(term =>
                term.SaidAs.Select(said => (Words: PlainWords.Joined(said.Text), term.Id))).Distinct()
                .GroupBy(said => said.Words),
            same => Assert.Single(same));
    }

    private static Reply Aside(Walker walker, string words)
    {
        (string subject, int results) = (walker.Question.Subject, walker.State.Results.Length);
        Reply reply = walker.Say(words);
        Assert.Equal((subject, results), (walker.Question.Subject, walker.State.Results.Length));
        Assert.Empty(walker.State.PassedOver);
        return reply;
    }

    private static IEnumerable<string> Said(Reply reply) =>
        reply.Segments.Where(segment => segment.Kind != SegmentKind.Question).Select(segment => segment.Text);

    private static bool HasCautions(Walker walker) => walker.Question.Kind == QuestionKind.Check
        && !ShippedContent.Library.Checks[new CheckId(walker.Question.Subject)].Cautions.IsEmpty;

    private static Walker AtCheck(string role)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", role, "poor-cooling");
        while (walker.Question.Kind != QuestionKind.Check || walker.Question.Subject == "danger-signs")
            HiddenFault.Typical("filter-blocked").Answer(walker);
        return walker;
    }

    [Theory]
    [InlineData("summary")]
    [InlineData("show me the warranty summary")]
    [InlineData("serial number?")]
    public void Sheet_OfAClosedCase_IsToldWhereItIs(string words)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "weak-airflow");
        walker.Order(CommandWord.StopHere);
        Reply reply = walker.Say(words);
        Assert.Contains(reply.Segments, segment => segment.From.Contains(new Provenance.Phrase("answer-sheet")));
        Assert.Equal(QuestionKind.Closed, walker.Question.Kind);
    }
}
