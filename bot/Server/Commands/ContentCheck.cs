using System.Globalization;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Content;

namespace DxAssistant.Server.Commands;

/// <summary><c>content check [folder]</c>: says everything that is wrong with the pages.</summary>
internal static class ContentCheck
{
    /// <summary>The folder taken when none is named.</summary>
    public const string UsualFolder = "content";

    /// <summary>Checks a folder and writes what it finds, then one line of counts.</summary>
    /// <returns>0 clean, 1 something found, 2 no such folder.</returns>
    public static int Run(string? folder, TextWriter output, TextWriter error)
    {
        string root = (folder ?? UsualFolder).Replace('\\', '/').TrimEnd('/');
        if (!Directory.Exists(root))
        {
            error.WriteLine($"there is no folder {root}; name the folder of the pages: content check FOLDER");
            return 2;
        }

        ContentFolder pages = ContentFolderReader.Read(root);
        CompileResult result = ContentCompiler.Compile(pages);
        foreach (Diagnostic diagnostic in result.Diagnostics)
        {
            output.Write(DiagnosticText.Render(diagnostic, pages, root + "/") + "\n");
        }

        output.Write(Counts(pages, result) + "\n");
        return result.IsClean ? 0 : 1;
    }

    private static string Counts(ContentFolder pages, CompileResult result)
    {
        int errors = result.Diagnostics.Count(diagnostic => diagnostic.Severity == Severity.Error);
        int warnings = result.Diagnostics.Length - errors;
        return string.Create(CultureInfo.InvariantCulture,
            $"{pages.Pages.Length} pages, {errors} errors, {warnings} warnings");
    }
}
