namespace DxAssistant.Bot.Tests.Server.Commands;

/// <summary>
/// Answers as if typed: each stands in what is said, where it was asked for; <c>↵</c> is Enter alone.
/// </summary>
internal sealed class TypedAnswers(IReadOnlyList<string> answers, TextWriter said) : TextReader
{
    private int given;

    public override string? ReadLine()
    {
        if (given == answers.Count) return null;
        string answer = answers[given++];
        said.Write($"> {answer}\n");
        return answer == "↵" ? "" : answer;
    }
}
