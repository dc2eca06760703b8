using System.Text.RegularExpressions;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Content;

namespace DxAssistant.Bot.Tests.Server.Commands;

/// <summary>The first fault of the manual for authors, typed and edited exactly as its text says.</summary>
public sealed partial class ManualStepsTests : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("manual").FullName;

    private string Folder => Path.Combine(root, "pages");

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Fact]
    public async Task FirstFault_EachStepAsWritten_EndsWithAPageThatAReadingProves()
    {
        int sessions = 0, edits = 0;
        foreach (Match block in Blocks().Matches(Section()))
        {
            string[] lines = [.. block.Groups["text"].Value.TrimEnd().Split('\n').Select(line => line.Length > 3 ? line[3..] : "")];
            if (block.Groups["kind"].Value == "session") sessions += await TypedAsync(lines);
            else edits += Edited(lines);
        }

        Assert.Equal((6, 6), (sessions, edits));
        CompileResult pages = ContentCompiler.Compile(ContentFolderReader.Read(Folder));
        Assert.Empty(pages.Diagnostics);
        Assert.Equal("band", pages.Library!.Checks[new CheckId("fan-capacitor-value")].Calculation);
        Assert.Equal(["fan-capacitor-value"], pages.Library.Graph.ChecksOf(new FaultId("fan-capacitor-weak")).Select(check => check.Id.Value));
    }

    // Each command ends well.
    private async Task<int> TypedAsync(string[] lines)
    {
        int commands = 0;
        for (int at = 0; at < lines.Length; commands++)
        {
            string[] words = [.. lines[at++][2..].Split(' ').Select(word => word == "pages" ? Folder : word)];
            List<string> answers = [];
            for (; at < lines.Length && !lines[at].StartsWith("$ ", StringComparison.Ordinal); at++) answers.Add(lines[at] == "↵" ? "" : lines[at]);
            Run run = await Run.OfAsync(string.Concat(answers.Select(answer => answer + "\n")), words);
            Assert.True(run.Code == 0, string.Join(' ', words) + "\n" + run.Output + run.Error);
        }

        return commands;
    }

    private int Edited(string[] lines)
    {
        string page = Path.Combine(Folder, lines[0]), text = File.ReadAllText(page);
        string old = Side(lines, '-'), put = Side(lines, '+');
        Assert.Contains(old, text, StringComparison.Ordinal);
        File.WriteAllText(page, text.Replace(old, put, StringComparison.Ordinal));
        return 1;
    }

    private static string Side(string[] lines, char mark) =>
        string.Concat(lines.Skip(1).Where(line => line[0] == mark || line[0] == ' ').Select(line => line[1..] + "\n"));

    private static string Section() => File.ReadAllText(Repository.PathOf("knowledge", "Content", "MANUAL.md"))
        .Split("## A first fault in six steps")[1].Split("\n## ")[0];

    [GeneratedRegex(@"^   ```(?<kind>session|diff)\n(?<text>.*?)^   ```$", RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.CultureInvariant)]
    private static partial Regex Blocks();
}
