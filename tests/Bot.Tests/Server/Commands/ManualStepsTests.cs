using System.Text.RegularExpressions;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Content;

namespace DxAssistant.Bot.Tests.Server.Commands;

/// <summary>The manual's way to a first fault leads there, and the record of it says what came back.</summary>
public sealed partial class ManualStepsTests : IDisposable
{
    private static readonly string RecordPage = Repository.PathOf("knowledge", "Content", "FIRST-PAGE.md");

    private readonly string root = Directory.CreateTempSubdirectory("manual").FullName;

    private string Folder => Path.Combine(root, "pages");

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Fact]
    public async Task FirstFault_EachStepAsWritten_EndsWithAPageThatAReadingProves()
    {
        await TakeAsync();
        CompileResult pages = ContentCompiler.Compile(ContentFolderReader.Read(Folder));
        Assert.All(pages.Diagnostics, left => Assert.Equal("left-to-do", left.Name));
        Assert.Equal("band", pages.Library!.Checks[new CheckId("fan-capacitor-value")].Calculation);
        Assert.Equal(["fan-capacitor-value"], pages.Library.Graph.ChecksOf(new FaultId("fan-capacitor-weak"))
            .Select(check => check.Id.Value));
    }

    [Fact]
    public async Task Record_OfTheFirstFault_IsWhatCommandsAnswer()
    {
        IReadOnlyList<string> record = await TakeAsync();
        string page = await File.ReadAllTextAsync(RecordPage);
        if (Environment.GetEnvironmentVariable("DX_UPDATE") == "1")
        {
            int at = 0;
            await File.WriteAllTextAsync(RecordPage, page = Blocks()
                .Replace(page, block => $"```{block.Groups["kind"].Value}\n{record[at++]}```"));
        }

        Assert.Equal(record, Blocks().Matches(page).Select(block => block.Groups["text"].Value));
    }

    private async Task<IReadOnlyList<string>> TakeAsync()
    {
        var steps = new ManualSteps(await File.ReadAllTextAsync(Repository.PathOf("knowledge", "Content", "MANUAL.md")),
            Folder);
        await steps.TakeAsync();
        return steps.Record;
    }

    [GeneratedRegex(@"^```(?<kind>text|diff)\n(?<text>.*?)^```$",
        RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.CultureInvariant)]
    private static partial Regex Blocks();
}
