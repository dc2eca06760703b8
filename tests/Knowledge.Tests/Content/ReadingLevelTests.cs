using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Tests.Content;

/// <summary>
/// Words that are read on a roof, or out loud over the telephone. Limits: common practice, no source.
/// </summary>
public class ReadingLevelTests
{
    private const int QuestionWords = 20;
    private const int AnswerWords = 6;
    private const int SentenceWords = 25;

    private static readonly Library Shipped = ContentCompiler.Compile(RepositoryFolder.Read("content")).Library!;

    [Fact]
    public void Ask_EveryCheck_IsOneShortSentence() =>
        Assert.All(Shipped.Checks.Values, check => AssertShortQuestion(check.Ask));

    [Fact]
    public void Verify_EveryRepair_IsOneShortSentence() =>
        Assert.All(Shipped.Repairs.Values, repair => AssertShortQuestion(repair.Verify));

    [Fact]
    public void Answer_EveryOutcome_IsSixWordsAtMost() => Assert.All(
        Shipped.Checks.Values.SelectMany(check => check.Outcomes),
        outcome => AssertAtMost(AnswerWords, outcome.Answer.Text));

    [Fact]
    public void How_EveryCheckAndRepair_HasShortSentences() => Assert.All(
        Shipped.Checks.Values.SelectMany(check => check.How)
            .Concat(Shipped.Repairs.Values.SelectMany(repair => repair.Steps)),
        step => Assert.All(Sentences(step.Text), sentence => AssertAtMost(SentenceWords, sentence)));

    [Fact]
    public void Caution_EveryLine_HasShortSentences() => Assert.All(
        Shipped.Cautions.Values.SelectMany(caution => caution.Do.Append(caution.Danger)),
        line => Assert.All(Sentences(line.Text), sentence => AssertAtMost(SentenceWords, sentence)));

    private static void AssertShortQuestion(Passage question)
    {
        AssertAtMost(QuestionWords, question.Text);
        Assert.Single(Sentences(question.Text));
    }

    private static void AssertAtMost(int words, string text) =>
        Assert.True(text.Split(' ').Length <= words, $"{text.Split(' ').Length} words: {text}");

    private static string[] Sentences(string text) =>
        text.Split([". ", "? ", "! ", ": "], StringSplitOptions.RemoveEmptyEntries);
}
