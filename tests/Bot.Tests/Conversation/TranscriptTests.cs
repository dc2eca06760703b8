using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>
/// Every page of tests/Conversations is played; <c>DX_UPDATE=1</c> writes the answers anew, and the difference is
/// reviewed.
/// </summary>
public sealed class TranscriptTests
{
    public static TheoryData<string> Pages =>
        [.. Directory.GetFiles(Repository.PathOf("tests", "Conversations"), "*.md")
            .Select(path => Path.GetFileName(path)!).Order(StringComparer.Ordinal)];

    // The page of what people type that makes no sense.
    private const string Nonsense = "bad-input.md";

    [Theory]
    [MemberData(nameof(Pages))]
    public void Transcript_Played_AnswersAsWritten(string page)
    {
        string path = Repository.PathOf("tests", "Conversations", page);
        string written = File.ReadAllText(path);
        string played = Transcript.Play(ShippedContent.Assistant, written);
        if (Environment.GetEnvironmentVariable("DX_UPDATE") == "1") File.WriteAllText(path, played);
        else Assert.Equal(written, played);
    }

    // Content moves the steps, and answers written for the old ones go astray: a page that is then only written anew
    // shows nothing.
    [Theory]
    [MemberData(nameof(Pages))]
    public void Transcript_OfSense_HasNoAnswerThatMissesItsQuestion(string page)
    {
        if (page == Nonsense) return;
        string written = File.ReadAllText(Repository.PathOf("tests", "Conversations", page));
        foreach (string phrase in new[] { "notice-choose", "notice-nothing-here", "notice-answer-first" })
            foreach (PhraseBook phrases in ShippedContent.Library.Translations.Values.Prepend(ShippedContent.Library)
                .Select(library => library.Phrases))
                Assert.DoesNotContain(phrases.Template(phrase), written, StringComparison.Ordinal);
    }
}
