using System.Collections.Immutable;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Content;

namespace DxAssistant.Bot.Tests.Server.Commands;

public sealed class ContentNewTests : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("pages").FullName;

    private string Folder => Path.Combine(root, "pages");

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Fact]
    public async Task Start_EmptyFolder_LacksOnlyWhatIsToBeWritten()
    {
        Assert.Equal(0, (await Run.OfAsync("", "content", "start", Folder)).Code);
        Assert.Empty(Diagnostics());
    }

    [Fact]
    public async Task Start_FolderThatIsThere_IsRefused() =>
        Assert.Equal(2, (await Run.OfAsync("", "content", "start", root)).Code);

    // From nothing to a fault that a computed reading proves, as the manual for authors tells it.
    [Fact]
    public async Task New_RepairFaultAndCheckWithACalculation_CompileOnceTheToDosAreDone()
    {
        await Run.OfAsync("", "content", "start", Folder);
        await New("repair", "replace-fan-capacitor", "Replace the fan capacitor", "20", "", "", "", "fan capacitor",
            "");
        await New("fault", "fan-capacitor-weak", "Fan capacitor weak", "The capacitor has lost most of its value.",
            "regular", "fan capacitor", "does-not-work", "often", "replace-fan-capacitor");
        await New("check", "fan-capacitor-value", "Value of the fan capacitor", "What does the fan capacitor read?",
            "5", "isolated-open", "", "band", "fan-capacitor-weak");
        Change("symptoms/does-not-work.md", text => text.Replace("|---|---|\n",
            "|---|---|\n| [Fan capacitor weak](../faults/fan-capacitor-weak.md) | often |\n"));
        Change("index.md", text => text + "- [Value of the fan capacitor](checks/fan-capacitor-value.md)\n");
        Change("checks/fan-capacitor-value.md", text => text
            .Replace("| reading | V | 0 V to 100 V |", "| capacitance | µF | 0 µF to 100 µF |")
            .Replace("| low | To do: lower end, included |", "| low | 1.9 µF |")
            .Replace("| high | To do: upper end, included |", "| high | 2.1 µF |")
            .Replace("| meter | To do: ",
                "| meter | 1 % + 1 × 0.01 µF | [Common practice](../sources.md#common-practice) |\n| meter | To do: ")
            .Replace("| seldom |  |  |", "| seldom | often | |"));
        Change("checks/fan-capacitor-value.md", text => string.Concat(text.Split('\n')
            .Where(line => !line.StartsWith("| meter | To do: ", StringComparison.Ordinal)).Select(line => line + "\n"))
            .TrimEnd('\n') + "\n");
        Assert.Empty(Diagnostics());
    }

    [Fact]
    public async Task New_PageThatIsThere_IsNeverWrittenOver()
    {
        await Run.OfAsync("", "content", "start", Folder);
        Run run = await Run.OfAsync("watch-and-record\n", "content", "new", "repair", Folder);
        Assert.Equal(2, run.Code);
        Assert.Contains("watch-and-record is there already", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task New_AnswerThatWillNotDo_IsAskedForAgain()
    {
        await Run.OfAsync("", "content", "start", Folder);
        Run run = await Run.OfAsync("Fan Broken\nfan-broken\n\n", "content", "new", "fault", Folder);
        Assert.Contains("use small letters, digits and single hyphens", run.Output, StringComparison.Ordinal);
        Assert.Contains("an answer is needed", run.Output, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(Folder, "faults", "fan-broken.md")));
    }

    [Fact]
    public async Task New_QuestionMark_ListsWhatMayBeAnswered()
    {
        await Run.OfAsync("", "content", "start", Folder);
        Run run = await Run.OfAsync("plug\nPlug\nIs it home?\n5\n\n\n?\n", "content", "new", "check", Folder);
        foreach (string judge in DxAssistant.Knowledge.Judging.JudgeCatalogue.All.Keys)
            Assert.Contains(judge, run.Output, StringComparison.Ordinal);
        Run fault = await Run.OfAsync("plug\nPlug\nA plug.\n", "content", "new", "fault", Folder);
        Assert.Contains("How often it is met (", fault.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task New_FaultWithoutASymptom_IsNotAskedHowOftenItShowsIt()
    {
        await Run.OfAsync("", "content", "start", Folder);
        await New("fault", "plug-loose", "Plug loose", "A plug is not home.", "", "", "", "");
        Assert.True(File.Exists(Path.Combine(Folder, "faults", "plug-loose.md")));
    }

    [Fact]
    public async Task New_NoQuestionAndNoMinutes_AreAskedForAgain()
    {
        await Run.OfAsync("", "content", "start", Folder);
        Run run = await Run.OfAsync("plug\nPlug\nLook at the plug\nIs it home?\nfive\n5\n\n\n\n\n\n", "content", "new",
            "check", Folder);
        Assert.Contains("end it with its question mark", run.Output, StringComparison.Ordinal);
        Assert.Contains("write minutes as a number", run.Output, StringComparison.Ordinal);
        Assert.Contains("\nIs it home?\n", File.ReadAllText(Path.Combine(Folder, "checks", "plug.md")),
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task New_CheckWithEachCalculation_LacksOnlyWhatItSays()
    {
        await Run.OfAsync("", "content", "start", Folder);
        foreach (string judge in DxAssistant.Knowledge.Judging.JudgeCatalogue.All.Keys)
            await New("check", $"check-{judge}", $"Check {judge}", "What does it read?", "5", "", "", judge, "");
        string[] allowed = ["check-separates-nothing", "missing-rating", "missing-source", "readings-do-not-fit",
            "unknown-unit", "unreachable-page", "wrong-input", "wrong-range", "inputs-do-not-fit", "missing-input",
            "wrong-link"];
        Assert.Empty(Diagnostics().Where(found => !allowed.Contains(found.Name)).Select(found => found.ToString()));
    }

    // But for the places that a new page leaves to its author.
    private ImmutableArray<Diagnostic> Diagnostics() =>
        [.. ContentCompiler.Compile(ContentFolderReader.Read(Folder)).Diagnostics.Where(
            found => found.Name != RuleBook.LeftToDo)];

    private void Change(string page, Func<string, string> change)
    {
        string path = Path.Combine(Folder, page);
        File.WriteAllText(path, change(File.ReadAllText(path)));
    }

    private async Task New(string kind, params string[] answers)
    {
        Run run = await Run.OfAsync(string.Join('\n', answers) + "\n", "content", "new", kind, Folder);
        Assert.True(run.Code == 0, run.Output + run.Error);
    }
}
