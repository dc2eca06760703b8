using System.Text.RegularExpressions;
using DxAssistant.Server.Commands;

namespace DxAssistant.Bot.Tests.Server.Commands;

/// <summary>
/// The first fault of the manual for authors, typed and edited exactly as its text says, with a record of it.
/// </summary>
/// <param name="manual">The text of the manual.</param>
/// <param name="folder">Where the pages are made; called <c>pages</c> in manual and record.</param>
internal sealed partial class ManualSteps(string manual, string folder)
{
    private readonly List<string> record = [];

    /// <summary>A block for each command and each edit: what was typed and what came back, or the difference.</summary>
    public IReadOnlyList<string> Record => record;

    /// <summary>Takes the steps in their order.</summary>
    /// <param name="after">Called after each block of the manual.</param>
    /// <exception cref="InvalidOperationException">
    /// A command ends otherwise than the manual says, or an edit finds nothing to change.
    /// </exception>
    public async Task TakeAsync(Func<Task>? after = null)
    {
        foreach (Match block in Blocks().Matches(Section()))
        {
            string[] lines =
                [.. block.Groups["text"].Value.TrimEnd().Split('\n').Select(line => line.Length > 3 ? line[3..] : "")];
            if (block.Groups["kind"].Value == "diff") Edit(lines);
            else await TypeAsync(lines, block.Groups["code"].Value == "1" ? 1 : 0);
            if (after is not null) await after();
        }
    }

    private async Task TypeAsync(string[] lines, int code)
    {
        for (int at = 0; at < lines.Length;)
        {
            string command = lines[at++][2..];
            List<string> answers = [];
            for (; at < lines.Length && !lines[at].StartsWith("$ ", StringComparison.Ordinal); at++)
                answers.Add(lines[at]);
            (int ended, string said) = await RunAsync(command.Split(' '), answers);
            record.Add($"$ {command}\n{said.TrimEnd()}\n");
            if (ended != code) throw new InvalidOperationException($"{command} ended with {ended}\n{said}");
        }
    }

    private async Task<(int Code, string Said)> RunAsync(IEnumerable<string> words, IReadOnlyList<string> answers)
    {
        using var said = new StringWriter { NewLine = "\n" };
        using var typed = new TypedAnswers(answers, said);
        int code = await CommandLine.RunAsync([.. words.Select(word => word == "pages" ? folder : word)],
            new Streams(typed, said, said));
        return (code, said.ToString().Replace(folder, "pages", StringComparison.Ordinal));
    }

    private void Edit(string[] lines)
    {
        string page = Path.Combine(folder, lines[0]), text = File.ReadAllText(page);
        string old = Side(lines, '-'), put = Side(lines, '+');
        if (!text.Contains(old, StringComparison.Ordinal))
            throw new InvalidOperationException($"{lines[0]} has no {old}");
        File.WriteAllText(page, text.Replace(old, put, StringComparison.Ordinal));
        record.Add(string.Join('\n', lines) + "\n");
    }

    private static string Side(string[] lines, char mark) =>
        string.Concat(lines.Skip(1).Where(line => line[0] == mark || line[0] == ' ').Select(line => line[1..] + "\n"));

    private string Section() => manual.Split("## A first fault in six steps")[1].Split("\n## ")[0];

    [GeneratedRegex(@"^   ```(?<kind>session|diff)(?: ends with (?<code>1))?\n(?<text>.*?)^   ```$",
        RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.CultureInvariant)]
    private static partial Regex Blocks();
}
