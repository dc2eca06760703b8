using System.Text;
using System.Text.Json.Nodes;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Commands;
using DxAssistant.Server.Commands.Authoring;
using DxAssistant.Server.Content;
using DxAssistant.Server.Workbench.Editor;

namespace DxAssistant.Bot.Tests.Server.Workbench;

/// <summary>A scripted editor: what it says is written beforehand, what it gets is read afterwards.</summary>
public sealed class EditorServerTests : IDisposable
{
    private const string Plug = "checks/fan-plug.md";

    private readonly TinyPages pages = new();
    private readonly List<JsonObject> script = [];
    private int ids;

    public void Dispose() => pages.Dispose();

    [Fact]
    public void Open_PageWithASlip_IsMarkedAndClearedOnceItIsMended()
    {
        Open(Plug, pages.Read(Plug).Replace("who: technician", "who: technican"));
        Say("textDocument/didChange", new JsonObject
        {
            ["textDocument"] = Document(Plug),
            ["contentChanges"] = new JsonArray(new JsonObject { ["text"] = pages.Read(Plug) }),
        });
        JsonObject[] told =
            [.. Play().Where(message => (string?)message["method"] == "textDocument/publishDiagnostics")];
        Assert.Equal(2, told.Length);
        Assert.All(told, message => Assert.Equal(Address(Plug), (string?)message["params"]!["uri"]));
        JsonNode found = Assert.Single(told[0]["params"]!["diagnostics"]!.AsArray())!;
        Assert.Equal(("unknown-id", 5, 5, 14), ((string?)found["code"], (int)found["range"]!["start"]!["line"]!,
            (int)found["range"]!["start"]!["character"]!, (int)found["range"]!["end"]!["character"]!));
        Assert.Empty(told[1]["params"]!["diagnostics"]!.AsArray());
    }

    [Theory]
    [InlineData("textDocument/didOpen", """{"textDocument":{"uri":"URI"}}""")]
    [InlineData("textDocument/didOpen", """{"textDocument":"fan-plug"}""")]
    [InlineData("textDocument/didChange", """{"textDocument":{"uri":"URI"},"contentChanges":[]}""")]
    [InlineData("textDocument/didChange", """{"textDocument":{"uri":"URI"}}""")]
    public void Notice_ThatSaysTooLittle_IsPassedOver(string method, string said)
    {
        Say(method, (JsonObject)JsonNode.Parse(said.Replace("URI", Address(Plug), StringComparison.Ordinal))!);
        Open(Plug, pages.Read(Plug));
        int id = Ask("textDocument/hover", Position("minutes: 3", 9));
        Assert.NotNull(Result(id));
    }

    [Theory]
    [InlineData("textDocument/hover")]
    [InlineData("textDocument/definition")]
    [InlineData("textDocument/completion")]
    [InlineData("textDocument/rename")]
    [InlineData("textDocument/codeAction")]
    public void Question_WithoutAPlace_IsAnsweredAsWrong(string method)
    {
        Open(Plug, pages.Read(Plug));
        int id = Ask(method, new JsonObject { ["textDocument"] = Document(Plug) });
        Assert.Equal(-32602, (int)Assert.Single(Play(), message => (int?)message["id"] == id)["error"]!["code"]!);
    }

    [Theory]
    [InlineData("../cautions/live-mains.md", "cautions/live-mains.md")]
    [InlineData("isolated-open", "access/isolated-open.md")]
    [InlineData("technician", "roles.md")]
    [InlineData("| never | always |", "words.md", 3)]
    [InlineData("#common-practice", "sources.md")]
    public void Definition_OfWhatIsNamed_IsItsPlace(string words, string page, int right = 1)
    {
        Open(Plug, pages.Read(Plug));
        int id = Ask("textDocument/definition", Position(words, right));
        Assert.Equal(Address(page), (string?)Result(id)!["uri"]);
    }

    [Theory]
    [InlineData("| never | always |", 3, "Of 100 units with this fault, 1 show the outcome `home`.")]
    [InlineData("0.03", 1, "Of 100 units with this fault, 3 show the outcome `loose`.")]
    [InlineData("minutes: 3", 9, "Minutes at the unit")]
    [InlineData("../cautions/live-mains.md", 1, "**Live mains**")]
    public void Hover_OfANumberOrWord_SaysWhatItMeans(string words, int right, string said)
    {
        Open(Plug, pages.Read(Plug));
        int id = Ask("textDocument/hover", Position(words, right));
        Assert.Contains(said, (string?)Result(id)!["contents"]!["value"], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("checks/board-supply.md", "| board supply | ", 20,
        "The assistant asks back about a reading outside of it.")]
    [InlineData("checks/board-supply.md", "calculation: ", 14, "Verdicts: within, low, high")]
    [InlineData("access/isolated-open.md", "](closed-running.md) | ", 23,
        "Minutes to bring the unit from that state to this one.")]
    [InlineData("faults/fan-plug-loose.md", "frequency: ", 12, "how often the fault is met against others")]
    public void Hover_OnOtherPages_SaysWhatItMeans(string page, string words, int right, string said)
    {
        Open(page, pages.Read(page));
        int id = Ask("textDocument/hover", Position(words, right, page));
        Assert.Contains(said, (string?)Result(id)!["contents"]!["value"], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("access: [", "isolated-open")]
    [InlineData("who: ", "technician")]
    [InlineData("| [Fan plug loose](../faults/fan-plug-loose.md) | ", "sometimes")]
    [InlineData("- [Live mains](", "../cautions/live-mains.md")]
    public void Completion_AtAPlace_OffersWhatFits(string before, string offered)
    {
        Open(Plug, pages.Read(Plug));
        int id = Ask("textDocument/completion", Position(before, before.Length));
        Assert.Contains(offered, Result(id)!.AsArray().Select(choice => (string?)choice!["label"]));
    }

    [Theory]
    [InlineData("calculation: ", "winding-balance")]
    [InlineData("| board supply | ", "mV")]
    [InlineData("## Expected\n| Input | Value | Source |\n|---|---|---|\n| ", "meter")]
    public void Completion_OnACheckThatCalculates_OffersWhatFits(string before, string offered)
    {
        Open("checks/board-supply.md", pages.Read("checks/board-supply.md"));
        int id = Ask("textDocument/completion", Position(before, before.Length, "checks/board-supply.md"));
        Assert.Contains(offered, Result(id)!.AsArray().Select(choice => (string?)choice!["label"]));
    }

    [Fact]
    public void Rename_Fault_LeavesPagesWithoutADiagnostic()
    {
        Open("faults/fan-plug-loose.md", pages.Read("faults/fan-plug-loose.md"));
        JsonObject asked = Position("id: fan-plug-loose", 6, "faults/fan-plug-loose.md");
        asked["newName"] = "plug-not-home";
        Do(Result(Ask("textDocument/rename", asked))!["documentChanges"]!.AsArray());
        Assert.Empty(ContentCompiler.Compile(ContentFolderReader.Read(pages.Folder)).Diagnostics);
        Assert.True(File.Exists(pages.PathOf("faults/plug-not-home.md")));
        Assert.DoesNotContain("fan-plug-loose",
            string.Concat(Directory.EnumerateFiles(pages.Folder, "*.md", SearchOption.AllDirectories)
                .Select(File.ReadAllText)));
    }

    [Fact]
    public void Rename_ToAnIdThatIsThere_IsRefused()
    {
        Open(Plug, pages.Read(Plug));
        JsonObject asked = Position("fan-plug-loose.md", 1);
        asked["newName"] = "fan-motor-failed";
        int id = Ask("textDocument/rename", asked);
        Assert.Equal("fan-motor-failed is there already", (string?)Play()
            .Single(message => (int?)message["id"] == id)["error"]!["message"]);
    }

    [Fact]
    public void CodeAction_OnASlip_OffersTheMend()
    {
        Open(Plug, pages.Read(Plug).Replace("who: technician", "who: technican"));
        int id = Ask("textDocument/codeAction", new JsonObject
        {
            ["textDocument"] = Document(Plug), ["context"] = new JsonObject(),
            ["range"] = new JsonObject { ["start"] = Place(5, 0), ["end"] = Place(5, 0) },
        });
        JsonNode action = Assert.Single(Result(id)!.AsArray())!;
        Assert.Equal("technician", (string?)action["edit"]!["changes"]![Address(Plug)]![0]!["newText"]);
    }

    [Fact]
    public void Initialize_SaysWhatIsAnswered_AndUnknownRequestsAreRefused()
    {
        int first = Ask("initialize", new JsonObject()), second =
            Ask("textDocument/foldingRange", new JsonObject()), third = Ask("shutdown", null);
        JsonObject[] told = [.. Play()];
        Assert.True(
            (bool)told.Single(message => (int?)message["id"] == first)["result"]!["capabilities"]!["renameProvider"]!);
        Assert.Equal(-32601, (int)told.Single(message => (int?)message["id"] == second)["error"]!["code"]!);
        Assert.True(told.Single(message => (int?)message["id"] == third).ContainsKey("result"));
    }

    // Started from anywhere: the pages are those of the folder that the editor has open.
    [Theory]
    [InlineData(null, "rootUri")]
    [InlineData("content", "rootUri")]
    [InlineData(null, "workspaceFolders")]
    [InlineData("content", "workspaceFolders")]
    public void Initialize_FolderNotFoundFromWhereItWasStarted_IsThatOfTheEditor(string? named, string said)
    {
        var address = new Uri(Path.GetDirectoryName(pages.Folder)! + "/").AbsoluteUri;
        Ask("initialize", new JsonObject
        {
            [said] = said == "rootUri"
                ? address
                : new JsonArray(new JsonObject { ["uri"] = address, ["name"] = "pages" }),
        });
        Open(Plug, pages.Read(Plug).Replace("who: technician", "who: technican"));
        Assert.Equal(Address(Plug), (string?)Play(named).Last()["params"]!["uri"]);
    }

    [Fact]
    public void Initialize_NoPagesAnywhere_IsAnsweredWithTheRemedy()
    {
        int id = Ask("initialize", new JsonObject { ["rootUri"] = new Uri(Path.GetTempPath()).AbsoluteUri });
        Assert.Contains("content serve-editor FOLDER", (string?)Play("no-such-folder")
            .Single(message => (int?)message["id"] == id)["error"]!["message"], StringComparison.Ordinal);
    }

    [Fact]
    public void Read_NoHead_IsRefused() => Assert.Equal(2, ContentServeEditor.Run(
        pages.Folder, new Streams(TextReader.Null, TextWriter.Null, TextWriter.Null),
        () => new MemoryStream("hello\n\n"u8.ToArray()), () => new MemoryStream()));

    private static void Do(JsonArray changes)
    {
        foreach (JsonNode change in changes.OfType<JsonNode>())
        {
            if ((string?)change["kind"] == "rename")
                File.Move(new Uri((string)change["oldUri"]!).LocalPath, new Uri((string)change["newUri"]!).LocalPath);
            else Edit(new Uri((string)change["textDocument"]!["uri"]!).LocalPath, change["edits"]!.AsArray());
        }
    }

    // Last first, so that the places before stay.
    private static void Edit(string file, JsonArray edits)
    {
        string[] lines = File.ReadAllText(file).Split('\n');
        foreach (JsonNode edit in edits.OfType<JsonNode>()
            .OrderByDescending(edit => (int)edit["range"]!["start"]!["line"]!)
            .ThenByDescending(edit => (int)edit["range"]!["start"]!["character"]!))
        {
            int line = (int)edit["range"]!["start"]!["line"]!;
            lines[line] = lines[line][..(int)edit["range"]!["start"]!["character"]!] + (string)edit["newText"]!
                + lines[line][(int)edit["range"]!["end"]!["character"]!..];
        }

        File.WriteAllText(file, string.Join('\n', lines));
    }

    private void Open(string page, string text) => Say("textDocument/didOpen", new JsonObject
    {
        ["textDocument"] = new JsonObject
        {
            ["uri"] = Address(page), ["languageId"] = "markdown", ["version"] = 1, ["text"] = text,
        },
    });

    private void Say(string method, JsonNode? said) =>
        script.Add(new JsonObject { ["jsonrpc"] = "2.0", ["method"] = method, ["params"] = said });

    private int Ask(string method, JsonNode? asked)
    {
        script.Add(new JsonObject { ["jsonrpc"] = "2.0", ["id"] = ++ids, ["method"] = method, ["params"] = asked });
        return ids;
    }

    private JsonNode? Result(int id) => Play().Single(message => (int?)message["id"] == id)["result"];

    private List<JsonObject> Play() => Play(pages.Folder);

    private List<JsonObject> Play(string? named)
    {
        using var input = new MemoryStream();
        foreach (JsonObject message in script)
        {
            byte[] text = Encoding.UTF8.GetBytes(message.ToJsonString());
            input.Write(Encoding.ASCII.GetBytes($"Content-Length: {text.Length}\r\n\r\n"));
            input.Write(text);
        }

        input.Position = 0;
        using var output = new MemoryStream();
        new EditorServer(new MessageFrames(input, output), named).Run();
        output.Position = 0;
        var reader = new MessageFrames(output, Stream.Null);
        var told = new List<JsonObject>();
        while (reader.Read() is { } message) told.Add(message);
        return told;
    }

    private JsonObject Position(string words, int right, string page = Plug)
    {
        string text = pages.Read(page);
        int at = text.IndexOf(words, StringComparison.Ordinal) + right;
        Assert.True(at >= right, $"{words} is not on the page");
        int line = text[..at].Count(c => c == '\n');
        return new JsonObject
        {
            ["textDocument"] = Document(page), ["position"] = Place(line, at - (text.LastIndexOf('\n', at - 1) + 1)),
        };
    }

    private static JsonObject Place(int line, int character) => new() { ["line"] = line, ["character"] = character };

    private JsonObject Document(string page) => new() { ["uri"] = Address(page) };

    private string Address(string page) => new Uri(pages.PathOf(page)).AbsoluteUri;
}
