using System.CommandLine;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Drafting;
using DxAssistant.Server.Content;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary><c>content new KIND</c>: begins a page by asking what only its author knows.</summary>
internal static class ContentNew
{
    public static Command Make(Streams streams)
    {
        var kind = new Argument<string>("kind") { Description = string.Join(", ", PageDraft.Kinds) };
        kind.AcceptOnlyFromAmong([.. PageDraft.Kinds]);
        Argument<string?> folder = ContentCommand.Folder();
        var begin = new Command("new",
            "Begin a page: asks a few questions, writes the page, never over another.") { kind, folder };
        begin.SetAction(call => Run(call.GetValue(kind)!, call.GetValue(folder), streams));
        return begin;
    }

    private static int Run(string kind, string? folder, Streams streams)
    {
        string root = (folder ?? ContentCheck.UsualFolder).Replace('\\', '/').TrimEnd('/');
        if (!Directory.Exists(root))
            return streams.Refuse($"there is no folder {root}; content start FOLDER makes one");
        PageDraft draft = PageDraft.Of(kind, ContentFolderReader.Read(root));
        var answers = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (DraftQuestion question in draft.Questions)
        {
            if ((question.IsAsked(answers) ? Ask(question, streams) : question.Usual ?? "") is not { } answer)
                return streams.Refuse($"the answers ended before \"{question.Text}\"");
            answers[question.Key] = answer;
        }

        DraftedPage page = draft.Write(answers);
        if (!NewFiles.TryWrite(Path.Combine(root, page.Path), page.Text, streams)) return ExitCode.WrongCall;
        streams.Out.Write($"\nWritten: {root}/{page.Path}. Look for \"To do:\" in it.\n");
        foreach ((string place, string line) in page.Additions) streams.Out.Write($"Put on {place}:\n  {line}\n");
        return ExitCode.Done;
    }

    // Until an answer will do; null when there is nobody to ask any more.
    private static string? Ask(DraftQuestion question, Streams streams)
    {
        while (true)
        {
            streams.Out.Write(Prompt(question));
            streams.Out.Flush();
            if (streams.In.ReadLine() is not { } line) return null;
            string answer = line.Trim();
            string? problem = answer == "?" && question.Listed is { } listed ? listed : question.ProblemWith(answer);
            if (problem is null) return answer.Length > 0 ? answer : question.Usual;
            streams.Out.Write($"  {problem}\n");
        }
    }

    // A few choices are named at once, many when somebody asks for them.
    private static string Prompt(DraftQuestion question)
    {
        const int few = 80;
        string choices = question.Listed is not { } listed ? "" : listed.Length <= few
            ? $" ({listed})"
            : " (? lists them)";
        return question.Text + choices + (question.Usual is { Length: > 0 } usual ? $" [{usual}]: " : ": ");
    }
}
