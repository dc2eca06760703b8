namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>Every page of tests/Conversations is played; <c>DX_UPDATE=1</c> writes the answers anew, and the difference is reviewed.</summary>
public sealed class TranscriptTests
{
    public static TheoryData<string> Pages =>
        [.. Directory.GetFiles(Repository.PathOf("tests", "Conversations"), "*.md")
            .Select(path => Path.GetFileName(path)!).Order(StringComparer.Ordinal)];

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
}
