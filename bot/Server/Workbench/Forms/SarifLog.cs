using System.Text.Json.Nodes;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Workbench.Forms;

/// <summary>What was found in the pages as a log that code hosts and editors read.</summary>
/// <remarks>
/// OASIS, Static Analysis Results Interchange Format (SARIF) Version 2.1.0, 27 March 2020: 3.13 sarifLog, 3.14 run,
/// 3.19 toolComponent, 3.27 result, 3.30 region, 3.49 reportingDescriptor, 3.55 fix (clause numbers from memory).
/// Columns count UTF-16 code units and the end column is the one after the last (3.30).
/// </remarks>
internal sealed class SarifLog
{
    private const string Schema =
        "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";
    private const string Base = "PAGES", Called = "CALLED";

    private readonly ContentFolder pages;
    private readonly Dictionary<string, int> places = [];

    private SarifLog(ContentFolder pages)
    {
        this.pages = pages;
        for (int i = 0; i < RuleBook.All.Length; i++) places[RuleBook.All[i].Name] = i;
    }

    /// <param name="root">
    /// The folder as it was named; paths of the log count from where the program was called, so that the log
    /// says the same on every machine.
    /// </param>
    public static JsonObject Of(CompileResult result, ContentFolder pages, string root) =>
        new SarifLog(pages).Log(result, root);

    private JsonObject Log(CompileResult result, string root) => new()
    {
        ["$schema"] = Schema,
        ["version"] = "2.1.0",
        ["runs"] = new JsonArray(new JsonObject
        {
            ["tool"] = new JsonObject
            {
                ["driver"] = new JsonObject
                {
                    ["name"] = "DxAssistant content check",
                    ["rules"] = new JsonArray([.. RuleBook.All.Select(Rule)]),
                },
            },
            ["originalUriBaseIds"] = Bases(root),
            ["columnKind"] = "utf16CodeUnits",
            ["results"] = new JsonArray([.. result.Diagnostics.Select(Result)]),
        }),
    };

    // 3.14.14: a base without a base of its own has an absolute URI or none, one with a base a relative one.
    private static JsonObject Bases(string root)
    {
        string folder = Path.GetRelativePath(Environment.CurrentDirectory, root);
        if (Path.IsPathRooted(folder))
            return new JsonObject { [Base] = new JsonObject { ["uri"] = new System.Uri(folder + "/").AbsoluteUri } };
        return new JsonObject
        {
            [Called] = new JsonObject { ["description"] = Text("The folder in which the command was called.") },
            [Base] = new JsonObject
            {
                ["uri"] = Uri(folder.Replace('\\', '/').TrimEnd('/') + "/"), ["uriBaseId"] = Called,
            },
        };
    }

    private static JsonObject Rule(RuleEntry rule) => new()
    {
        ["id"] = rule.Name,
        ["shortDescription"] = Text(rule.Meaning),
        ["help"] = new JsonObject
        {
            ["text"] = $"content explain {rule.Name}", ["markdown"] = RuleBook.Section(rule),
        },
    };

    private JsonObject Result(Diagnostic found)
    {
        var result = new JsonObject
        {
            ["ruleId"] = found.Name,
            ["ruleIndex"] = places[found.Name],
            ["level"] = found.Severity == Severity.Error ? "error" : "warning",
            ["message"] = Text(found.Help is null ? found.Message : $"{found.Message}: {found.Help}"),
            ["locations"] = new JsonArray(new JsonObject
            {
                ["physicalLocation"] = new JsonObject
                {
                    ["artifactLocation"] = Artifact(found.At.Path), ["region"] = Region(found.At),
                },
            }),
        };
        if (found.Mend is { } mend) result["fixes"] = new JsonArray(Fix(mend));
        return result;
    }

    private JsonObject Fix(Mend mend) => new()
    {
        ["description"] = Text($"write `{mend.Text}`"),
        ["artifactChanges"] = new JsonArray(new JsonObject
        {
            ["artifactLocation"] = Artifact(mend.At.Path),
            ["replacements"] = new JsonArray(new JsonObject
            {
                ["deletedRegion"] = Region(mend.At), ["insertedContent"] = Text(mend.Text),
            }),
        }),
    };

    private JsonObject Region(SourceSpan at)
    {
        string line = pages.File(at.Path)?.Text.Split('\n').ElementAtOrDefault(at.Line - 1) ?? "";
        (int start, int end) = TextColumns.InCodeUnits(line, at);
        return new JsonObject { ["startLine"] = at.Line, ["startColumn"] = start + 1, ["endColumn"] = end + 1 };
    }

    private static JsonObject Artifact(string path) => new() { ["uri"] = Uri(path), ["uriBaseId"] = Base };

    // RFC 3986: what is neither unreserved nor a slash is percent-encoded, so that a colon or a space stays in its
    // place.
    private static string Uri(string path) => string.Join('/', path.Split('/').Select(System.Uri.EscapeDataString));

    private static JsonObject Text(string text) => new() { ["text"] = text };
}
