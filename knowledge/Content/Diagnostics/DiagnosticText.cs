using System.Globalization;

namespace DxAssistant.Knowledge.Content;

/// <summary>
/// Writes diagnostics for authors: where and what is wrong, on which page, the words themselves, what to write.
/// </summary>
/// <remarks>
/// The first line stands alone, for editors and logs: path, line and column from 1, how bad it is, the rule in
/// brackets, what is wrong. The lines below it are set in by two blanks and begin with a word of their own; one that
/// has nothing to say is left out.
/// </remarks>
public static class DiagnosticText
{
    /// <summary>The lines of one diagnostic, each with its end.</summary>
    /// <param name="diagnostic">What to show.</param>
    /// <param name="folder">The folder it was found in; a page that is not there is shown without its words.</param>
    /// <param name="root">Put before the path so that an editor can open it, for example <c>content/</c>.</param>
    public static string Render(Diagnostic diagnostic, ContentFolder folder, string root = "")
    {
        ContentFile? page = folder.File(diagnostic.At.Path);
        return Head(diagnostic, root)
            + Line("page", page is null ? null : Place(page, diagnostic.At))
            + Line("words", page is null ? null : Words(page, diagnostic.At))
            + Line("mend", diagnostic.Help);
    }

    /// <summary>The first line and the words alone, for what is said by them.</summary>
    public static string Brief(Diagnostic diagnostic, ContentFolder folder, string root = "") =>
        Head(diagnostic, root)
            + Line("words", folder.File(diagnostic.At.Path) is { } page ? Words(page, diagnostic.At) : null);

    private static string Head(Diagnostic found, string root) => string.Create(CultureInfo.InvariantCulture,
        $"{root}{found.At.Path}:{found.At.Line}:{found.At.Column}: {(found.Severity == Severity.Error ? "error" : "warning")}[{found.Name}]: {found.Message}\n");

    private static string Line(string word, string? text) => text is null ? "" : $"  {word,-5}  {text}\n";

    private static string Place(ContentFile page, SourceSpan at) => page.IsPicture ? page.Path
        : PageTitle.Of(page)
            + (PageTitle.HeadingAbove(page, at.Line) is { } heading ? $", under {heading}" : ", at its head");

    private static string? Words(ContentFile page, SourceSpan at) =>
        page.Text.Split('\n').ElementAtOrDefault(at.Line - 1) is { } line && line.Trim().Length > 0
            ? QuotedWords.Of(line, at)
            : null;
}
