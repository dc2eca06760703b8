using System.Text.Json.Nodes;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Editing;
using DxAssistant.Knowledge.Content.Incremental;
using DxAssistant.Server.Content;
using DxAssistant.Server.Workbench.Forms;

namespace DxAssistant.Server.Workbench.Preview;

/// <summary>The pages that are previewed: compiled again at each change, whether or not they are right.</summary>
internal sealed class PreviewPages(string root)
{
    private readonly PageShelf shelf = new();
    private readonly IncrementalCompiler compiler = new();
    private readonly Lock gate = new();
    private volatile TaskCompletionSource next = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private volatile Compiled current = Nothing;
    private Compiled made = Nothing;

    private static Compiled Nothing => new(ContentFolder.Of([]), new CompileResult(null, []), null, 0);

    public Compiled Current => current;

    /// <summary>Ends at the next change.</summary>
    public Task Changed => next.Task;

    /// <param name="changed">What changed since the last time; null when anything may have.</param>
    public void Reload(IReadOnlyCollection<string>? changed = null) => Read(changed)();

    /// <summary>Compiles the pages.</summary>
    /// <returns>Shows them, unless they were compiled again meanwhile.</returns>
    public Action Read(IReadOnlyCollection<string>? changed)
    {
        lock (gate)
        {
            ContentFolder folder = shelf.Read(root, changed);
            if (!ReferenceEquals(folder, made.Folder))
            {
                CompileResult result = compiler.Compile(folder);
                made = new Compiled(folder, result, result.Library ?? made.LastGood, made.Number + 1);
            }

            Compiled mine = made;
            return () => Show(mine);
        }
    }

    private void Show(Compiled mine)
    {
        lock (gate)
        {
            if (mine != made || mine == current) return;
            current = mine;
            TaskCompletionSource before = next;
            next = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
            before.SetResult();
        }
    }

    /// <summary>All pages by path, and what is wrong with them.</summary>
    public JsonObject All()
    {
        Compiled now = current;
        JsonObject all = DiagnosticsJson.Of(now.Result, now.Folder, "");
        all["number"] = now.Number;
        ILookup<string, Diagnostic> found =
            now.Result.Diagnostics.ToLookup(each => each.At.Path, StringComparer.Ordinal);
        all["list"] = new JsonArray([.. now.Folder.Pages.Select(page => (JsonNode)new JsonObject
        {
            ["path"] = page.Path, ["title"] = PageTitle.Of(page), ["wrong"] = found[page.Path].Count(),
        })]);
        all["usesLastGood"] = now.Result.Library is null && now.LastGood is not null;
        all["walks"] = WalkChoices.Of(now.LastGood);
        return all;
    }

    /// <summary>One page as it will be seen and what is wrong with it; null when there is none.</summary>
    public JsonObject? One(string path)
    {
        Compiled now = current;
        return now.Folder.File(path) is not { IsPicture: false } page ? null : new JsonObject
        {
            ["path"] = path,
            ["html"] = PageHtml.Of(page.Text),
            ["found"] = new JsonArray([.. now.Result.Diagnostics.Where(found => found.At.Path == path)
                .Select(found => (JsonNode)DiagnosticsJson.Of(found, ""))]),
        };
    }

    /// <param name="LastGood">The library of this version, or else of the last one that had one.</param>
    /// <param name="Number">Counts the compiles.</param>
    internal sealed class Compiled(ContentFolder folder, CompileResult result, Library? lastGood, int number)
    {
        public ContentFolder Folder => folder;
        public CompileResult Result => result;
        public Library? LastGood => lastGood;
        public int Number => number;
    }
}
