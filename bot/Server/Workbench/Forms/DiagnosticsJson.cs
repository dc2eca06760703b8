using System.Text.Json.Nodes;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Workbench.Forms;

/// <summary>What was found in the pages, for programs.</summary>
internal static class DiagnosticsJson
{
    /// <param name="root">Put before each path, for example <c>content/</c>.</param>
    public static JsonObject Of(CompileResult result, ContentFolder pages, string root) => new()
    {
        ["pages"] = pages.Pages.Length,
        ["errors"] = result.Diagnostics.Count(found => found.Severity == Severity.Error),
        ["warnings"] = result.Diagnostics.Count(found => found.Severity == Severity.Warning),
        ["found"] = new JsonArray([.. result.Diagnostics.Select(found => Of(found, root))]),
    };

    /// <summary>One of them; columns and lengths count characters as a reader sees them.</summary>
    public static JsonObject Of(Diagnostic found, string root) => new()
    {
        ["path"] = root + found.At.Path,
        ["line"] = found.At.Line,
        ["column"] = found.At.Column,
        ["length"] = found.At.Length,
        ["severity"] = found.Severity == Severity.Error ? "error" : "warning",
        ["rule"] = found.Name,
        ["message"] = found.Message,
        ["help"] = found.Help,
        ["mend"] = found.Mend is not { } mend ? null : new JsonObject
        {
            ["line"] = mend.At.Line, ["column"] = mend.At.Column, ["length"] = mend.At.Length, ["text"] = mend.Text,
        },
    };
}
