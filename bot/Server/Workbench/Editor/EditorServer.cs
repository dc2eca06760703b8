using System.Text.Json.Nodes;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Editing;

namespace DxAssistant.Server.Workbench.Editor;

/// <summary>Answers an editor: errors as one types, definitions, choices, meanings, renames, mends.</summary>
/// <remarks>Language Server Protocol 3.17 over JSON-RPC 2.0; whole texts are sent at each change.</remarks>
/// <param name="named">The folder of the pages as it was called; null when the editor is to say where it is.</param>
internal sealed class EditorServer(MessageFrames frames, string? named)
{
    private const int NoSuchMethod = -32601, WrongRequest = -32602;

    private EditorFolder? opened = named is not null && Directory.Exists(named) ? new EditorFolder(named) : null;
    private readonly HashSet<string> marked = new(StringComparer.Ordinal);
    private bool isDone;

    /// <summary>Answers until the editor says goodbye or goes away.</summary>
    public void Run()
    {
        while (!isDone && frames.Read() is { } message)
        {
            string method = (string?)message["method"] ?? "";
            if (message["id"] is { } id) Answer(method, message["params"], id.DeepClone());
            else TryTake(method, message["params"]);
        }
    }

    // What is told is never answered, so a notice that says too little is passed over.
    private void TryTake(string method, JsonNode? said)
    {
        try
        {
            Take(method, said);
        }
        catch (Exception error) when (error is InvalidOperationException or FormatException)
        {
        }
    }

    private void Answer(string method, JsonNode? asked, JsonNode id)
    {
        var answer = new JsonObject { ["jsonrpc"] = "2.0", ["id"] = id };
        try
        {
            answer["result"] = method switch
            {
                "initialize" => Welcome(asked),
                "shutdown" => null,
                "textDocument/definition" => At(asked, Folder.Pages.Definition) is { } place ? Location(place) : null,
                "textDocument/hover" => At(asked, Folder.Pages.Hover) is { } said ? Hover(said) : null,
                "textDocument/completion" => Choices(asked),
                "textDocument/rename" => Rename(asked),
                "textDocument/codeAction" => Mends(asked),
                _ => throw new NotSupportedException(),
            };
        }
        catch (NotSupportedException)
        {
            answer.Remove("result");
            answer["error"] = new JsonObject
            {
                ["code"] = NoSuchMethod, ["message"] = $"{method} is not answered here",
            };
        }
        catch (Exception error) when (error is InvalidOperationException or FormatException)
        {
            answer.Remove("result");
            answer["error"] = new JsonObject { ["code"] = WrongRequest, ["message"] = error.Message };
        }

        frames.Write(answer);
    }

    private void Take(string method, JsonNode? said)
    {
        switch (method)
        {
            case "exit":
                isDone = true;
                return;
            case "textDocument/didOpen" when PathOf(said) is { } path:
                Folder.Change(path, Text(said?["textDocument"]?["text"]));
                break;
            case "textDocument/didChange" when PathOf(said) is { } path:
                Folder.Change(path, Text(said?["contentChanges"]?.AsArray().LastOrDefault()?["text"]));
                break;
            case "textDocument/didClose" when PathOf(said) is { } path:
                Folder.Reread();
                Folder.Close(path);
                break;
            case "initialized" or "textDocument/didSave" or "workspace/didChangeWatchedFiles":
                Folder.Reread();
                break;
            default:
                return;
        }

        Folder.Compile();
        Publish();
    }

    private EditorFolder Folder =>
        opened ?? throw new InvalidOperationException("there is no folder of pages: content serve-editor FOLDER");

    // Whatever was named may lie where the editor is and not where it started the program.
    private JsonObject Welcome(JsonNode? said)
    {
        if (opened is null && EditedFolder.Find(named, said) is { } root) opened = new EditorFolder(root);
        _ = Folder;
        return Abilities();
    }

    private static JsonObject Abilities() => new()
    {
        ["capabilities"] = new JsonObject
        {
            ["positionEncoding"] = "utf-16",
            ["textDocumentSync"] = new JsonObject { ["openClose"] = true, ["change"] = 1, ["save"] = true },
            ["definitionProvider"] = true,
            ["hoverProvider"] = true,
            ["completionProvider"] = new JsonObject { ["triggerCharacters"] = new JsonArray("(", "|", ":", "[", " ") },
            ["renameProvider"] = true,
            ["codeActionProvider"] = new JsonObject { ["codeActionKinds"] = new JsonArray("quickfix") },
        },
        ["serverInfo"] = new JsonObject { ["name"] = "DxAssistant pages" },
    };

    private void Publish()
    {
        ILookup<string, Diagnostic> found =
            Folder.Pages.Diagnostics.ToLookup(each => each.At.Path, StringComparer.Ordinal);
        foreach (string path in marked.Union(found.Select(page => page.Key)).Order(StringComparer.Ordinal))
        {
            frames.Write(new JsonObject
            {
                ["jsonrpc"] = "2.0",
                ["method"] = "textDocument/publishDiagnostics",
                ["params"] = new JsonObject
                {
                    ["uri"] = Folder.AddressOf(path),
                    ["diagnostics"] = new JsonArray([.. found[path].Select(Diagnostic)]),
                },
            });
        }

        marked.Clear();
        marked.UnionWith(found.Select(page => page.Key));
    }

    private JsonObject Diagnostic(Diagnostic found) => new()
    {
        ["range"] = Range(RangeOf(found.At)),
        ["severity"] = found.Severity == Severity.Error ? 1 : 2,
        ["code"] = found.Name,
        ["source"] = "content check",
        ["message"] = found.Help is null ? found.Message : $"{found.Message}: {found.Help}",
    };

    private JsonArray Choices(JsonNode? asked) => PathOf(asked) is not { } path ? []
        : [.. Folder.Pages.Choices(path, Line(asked, "position"), Number(asked?["position"]?["character"]))
            .Select((choice, place) => new JsonObject
            {
                ["label"] = choice.Text,
                ["detail"] = choice.About,
                ["sortText"] = $"{place:D5}",
                ["filterText"] = choice.Text,
                ["textEdit"] = Edit(choice.Replaces, choice.Text),
            })];

    // Edits stand before the new names of the files, since they name the files as they are.
    private JsonObject? Rename(JsonNode? asked)
    {
        if (PathOf(asked) is not { } path) return null;
        EditorRename? rename =
            Folder.Pages.Rename(path, Line(asked, "position"), Number(asked?["position"]?["character"]),
                Text(asked?["newName"]), out string? problem);
        if (rename is null) throw new InvalidOperationException(problem);
        JsonNode[] edits = [.. rename.Edits.GroupBy(edit => edit.Place.Path).Select(page => new JsonObject
        {
            ["textDocument"] = new JsonObject { ["uri"] = Folder.AddressOf(page.Key), ["version"] = null },
            ["edits"] = new JsonArray([.. page.Select(edit => Edit(edit.Place.Range, edit.Text))]),
        })];
        JsonNode[] files = [.. rename.Files.Select(file => new JsonObject
        {
            ["kind"] = "rename", ["oldUri"] = Folder.AddressOf(file.From), ["newUri"] = Folder.AddressOf(file.To),
        })];
        return new JsonObject { ["documentChanges"] = new JsonArray([.. edits, .. files]) };
    }

    private JsonArray Mends(JsonNode? asked)
    {
        if (PathOf(asked) is not { } path) return [];
        int first = Line(asked?["range"], "start"), last = Line(asked?["range"], "end");
        return
        [
            .. Folder.Pages.Diagnostics.Where(found => found.Mend is not null && found.At.Path == path
                    && found.At.Line - 1 >= first && found.At.Line - 1 <= last)
                .Select(found => new JsonObject
                {
                    ["title"] = $"Write `{found.Mend!.Text}`",
                    ["kind"] = "quickfix",
                    ["diagnostics"] = new JsonArray(Diagnostic(found)),
                    ["edit"] = new JsonObject
                    {
                        ["changes"] = new JsonObject
                        {
                            [Folder.AddressOf(path)] = new JsonArray(Edit(RangeOf(found.Mend.At), found.Mend.Text)),
                        },
                    },
                }),
        ];
    }

    private T? At<T>(JsonNode? asked, Func<string, int, int, T?> find) where T : class =>
        PathOf(asked) is { } path
            ? find(path, Line(asked, "position"), Number(asked?["position"]?["character"]))
            : null;

    private string? PathOf(JsonNode? asked) =>
        (string?)asked?["textDocument"]?["uri"] is { } address ? Folder.PathOf(address) : null;

    private EditorRange RangeOf(SourceSpan at) => EditorRange.Of(Folder.Pages.Text(at.Path) ?? "", at);

    private JsonObject Location(EditorPlace place) =>
        new() { ["uri"] = Folder.AddressOf(place.Path), ["range"] = Range(place.Range) };

    private static JsonObject Hover(EditorText said) => new()
    {
        ["contents"] = new JsonObject { ["kind"] = "markdown", ["value"] = said.Markdown },
        ["range"] = Range(said.Range),
    };

    private static JsonObject Edit(EditorRange range, string text) =>
        new() { ["range"] = Range(range), ["newText"] = text };

    private static JsonObject Range(EditorRange range) => new()
    {
        ["start"] = new JsonObject { ["line"] = range.StartLine, ["character"] = range.StartCharacter },
        ["end"] = new JsonObject { ["line"] = range.EndLine, ["character"] = range.EndCharacter },
    };

    private static int Line(JsonNode? asked, string place) => Number(asked?[place]?["line"]);

    private static string Text(JsonNode? node) => (string?)node ?? throw new FormatException("a text is missing");

    private static int Number(JsonNode? node) => (int?)node ?? throw new FormatException("a number is missing");
}
