using System.Collections.Immutable;
using DxAssistant.Bot.Tests.Server.Workbench;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.State;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Content;

namespace DxAssistant.Bot.Tests.Server.Commands;

public sealed class ContentCompareTests : IDisposable
{
    private readonly TinyPages pages = new();

    public void Dispose() => pages.Dispose();

    [Fact]
    public async Task Compare_SamePages_PlaysNothing()
    {
        Run run = await Run.OfAsync("", "content", "compare", pages.Folder, pages.Other(), "--longer", "0",
            "--isolated", "0");
        Assert.Equal((0, "No walk can have changed.\n"), (run.Code, run.Output));
    }

    [Fact]
    public async Task Compare_WordsAlone_PlayNothing()
    {
        string other = pages.Other();
        pages.Change("checks/fan-plug.md", text => text.Replace("1. ", "1. Look: "));
        Assert.Equal("No walk can have changed.\n",
            (await Run.OfAsync("", "content", "compare", other, pages.Folder)).Output);
    }

    // A careless edit: the check that tells the plug from the motor is said to show the same for both, near enough.
    [Fact]
    public async Task Compare_CheckMadeBlind_BreaksTheFloorOfIsolation()
    {
        string other = pages.Other();
        Blind();
        Run run = await Run.OfAsync("", "content", "compare", other, pages.Folder, "--isolated", "10", "--in-vain",
            "0.1", "--longer", "1000");
        Assert.Equal(1, run.Code);
        Assert.StartsWith("## Floors broken\n\n- alder-one, fan-not-turning: ", run.Output, StringComparison.Ordinal);
        Assert.Contains("more repairs in vain a walk", run.Output, StringComparison.Ordinal);
        Assert.Contains("mended by the first repair", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("minutes longer", run.Output, StringComparison.Ordinal);
        Assert.Contains("### alder-one, fan-not-turning: walk to fan-", run.Output, StringComparison.Ordinal);
        Assert.Contains("| **", run.Output, StringComparison.Ordinal);
    }

    // The manual shows what the command says; DX_UPDATE=1 writes it anew.
    [Fact]
    public async Task Compare_EditOfTheManual_SaysWhatTheManualShows()
    {
        const string call = "```text\n$ content compare old new --in-vain 0.1 --isolated 10\n";
        string manual = Repository.PathOf("knowledge", "Content", "MANUAL.md"), text =
            (await File.ReadAllTextAsync(manual)).ReplaceLineEndings("\n");
        int start = text.IndexOf(call, StringComparison.Ordinal) + call.Length, end =
            text.IndexOf("```", start, StringComparison.Ordinal);
        string other = pages.Other();
        Blind();
        Run run =
            await Run.OfAsync("", "content", "compare", other, pages.Folder, "--in-vain", "0.1", "--isolated", "10");
        Assert.Equal(1, run.Code);
        if (Environment.GetEnvironmentVariable("DX_UPDATE") == "1")
            await File.WriteAllTextAsync(manual, text[..start] + run.Output + text[end..]);
        else Assert.Equal(text[start..end], run.Output);
    }

    [Fact]
    public async Task Compare_BadEditWithoutFloors_TellsAndEndsWell()
    {
        string other = pages.Other();
        Blind();
        Run run = await Run.OfAsync("", "content", "compare", other, pages.Folder);
        Assert.Equal(0, run.Code);
        Assert.Contains("| alder-one | fan-not-turning |", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("sensor-code", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Compare_OtherDirection_BreaksNothing()
    {
        string other = pages.Other();
        Blind();
        Assert.Equal(0,
            (await Run.OfAsync("", "content", "compare", pages.Folder, other, "--isolated", "0", "--in-vain",
                "0")).Code);
    }

    [Fact]
    public async Task Compare_Commits_AreReadFromGit() =>
        Assert.Equal("No walk can have changed.\n", (await Run.OfAsync(
            "", "content", "compare", "HEAD", "HEAD", "--inside", "tests/Knowledge.Tests/Content/Tiny")).Output);

    [Fact]
    public async Task Compare_NeitherFolderNorCommit_IsAWrongCall()
    {
        Run run = await Run.OfAsync("", "content", "compare", "no-such-commit", pages.Folder);
        Assert.Equal(2, run.Code);
        Assert.Contains("no-such-commit is neither a folder nor a commit with a folder content", run.Error,
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task Compare_StoredCaseOfACodeThatMeansSomethingElseNow_IsListed()
    {
        ContentFolder shipped = ContentFolderReader.Read(Repository.PathOf("content"));
        string old = Write(shipped, "old");
        string fresh = Write(ContentFolder.Of(shipped.Files.Select(file => file.Path == "series/brenholt-ws.md"
            ? file with { Text = Swapped(file.Text) } : file)), "fresh");
        string cases = Path.Combine(pages.Folder, "cases.db");
        await Store(cases, ContentCompiler.Compile(shipped).Library!);
        byte[] before = await File.ReadAllBytesAsync(cases);
        Run run = await Run.OfAsync("", "content", "compare", old, fresh, "--cases", cases, "--conclusions", "0");
        Assert.Equal(1, run.Code);
        Assert.Contains("\n1 said again, 1 with another conclusion.\n", run.Output, StringComparison.Ordinal);
        Assert.Matches(@"\| one \| open: [a-z-]+ [0-9]+ % \| open: [a-z-]+ [0-9]+ % \|", run.Output);
        Assert.Contains("- 1 cases end otherwise\n", run.Output, StringComparison.Ordinal);
        Assert.Equal(before, await File.ReadAllBytesAsync(cases));
    }

    private void Blind() => pages.Change("checks/fan-plug.md", text => text
        .Replace("| [Fan plug loose](../faults/fan-plug-loose.md) | never | always |",
            "| [Fan plug loose](../faults/fan-plug-loose.md) | 0.96 | 0.04 |"));

    // The rows of two codes with the symptoms of each other.
    private static string Swapped(string page) => page
        .Replace("../symptoms/room-sensor-code.md", "../symptoms/x.md")
        .Replace("../symptoms/coil-sensor-code.md", "../symptoms/room-sensor-code.md")
        .Replace("../symptoms/x.md", "../symptoms/coil-sensor-code.md");

    private string Write(ContentFolder folder, string name)
    {
        string root = Path.Combine(pages.Folder, "..", name);
        foreach (ContentFile file in folder.Files)
        {
            string path = Path.Combine(root, file.Path);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, file.Text);
        }

        return root;
    }

    private static async Task Store(string file, Library library)
    {
        var assistant = new Assistant(library);
        await using SqliteCaseStore store = SqliteCaseStore.Open(file, TimeProvider.System);
        CaseState state = CaseState.New;
        long last = 0;
        string[] words = ["", "b4", "Brenholt WS", "technician"];
        foreach (string word in words)
        {
            MessageBody body = word.Length == 0 ? new MessageBody.Opening() : new MessageBody.Words(word);
            string turn = $"t{last}";
            var events = assistant.Take(state, new Message(turn, body)).Events;
            await store.AppendAsync("one", last, turn, events);
            last += events.Length;
            state = Fold.Apply(state, events);
        }
    }
}
