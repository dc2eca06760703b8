using System.CommandLine;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Commands.Asking;
using DxAssistant.Server.Content;
using DxAssistant.Server.Workbench.Forms;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary><c>content check [folder]</c>: says everything that is wrong with the pages.</summary>
internal static class ContentCheck
{
    /// <summary>The folder taken when none is named.</summary>
    public const string UsualFolder = "content";

    public static Command Make(Streams streams)
    {
        Argument<string?> folder = ContentCommand.Folder();
        var form = new Option<string>("--form")
        {
            Description = "text for people, json or sarif (SARIF 2.1.0, for code hosts and editors).",
            HelpName = "FORM",
            DefaultValueFactory = _ => "text",
        };
        form.AcceptOnlyFromAmong("text", "json", "sarif");
        var check = new Command("check", "Say everything that is wrong with the pages.") { folder, form };
        check.SetAction(call => Run(call.GetValue(folder), streams.Out, streams.Error, call.GetValue(form)!));
        return check;
    }

    /// <summary>Checks a folder and writes what it finds, then one line of counts.</summary>
    /// <returns>0 clean, 1 something found, 2 no such folder.</returns>
    public static int Run(string? folder, TextWriter output, TextWriter error, string form = "text")
    {
        string root = (folder ?? UsualFolder).Replace('\\', '/').TrimEnd('/');
        if (!Directory.Exists(root))
        {
            error.WriteLine($"there is no folder {root}; name the folder of the pages: content check FOLDER");
            return 2;
        }

        ContentFolder pages = ContentFolderReader.Read(root);
        CompileResult result = ContentCompiler.Compile(pages);
        output.Write(form switch
        {
            "json" => DiagnosticsJson.Of(result, pages, root + "/").ToJsonString(JsonLines.Plain) + "\n",
            "sarif" => SarifLog.Of(result, pages, root).ToJsonString(JsonLines.Plain) + "\n",
            _ => Text(result, pages, root + "/"),
        });
        return result.IsClean ? 0 : 1;
    }

    // What is only still to be written stands together at the end: on a new folder it would drown the rest.
    private static string Text(CompileResult result, ContentFolder pages, string root)
    {
        ILookup<bool, Diagnostic> found = result.Diagnostics.ToLookup(each => each.Name == RuleBook.LeftToDo);
        string left = string.Concat(found[true].Select(each => DiagnosticText.Brief(each, pages, root)));
        return string.Concat(found[false].Select(each => DiagnosticText.Render(each, pages, root) + "\n"))
            + (left.Length > 0 ? $"Still to be written:\n{left}\n" : "") + Counts(pages, result) + "\n";
    }

    private static string Counts(ContentFolder pages, CompileResult result)
    {
        int errors = result.Diagnostics.Count(diagnostic => diagnostic.Severity == Severity.Error);
        int warnings = result.Diagnostics.Length - errors;
        return $"{Counted.Of(pages.Pages.Length, "page")}, {Counted.Of(errors, "error")}, {Counted.Of(warnings, "warning")}";
    }
}
