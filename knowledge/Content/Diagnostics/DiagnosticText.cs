using System.Globalization;
using System.Text;

namespace DxAssistant.Knowledge.Content;

/// <summary>Writes diagnostics the way people and editors read them.</summary>
public static class DiagnosticText
{
    /// <summary>The heading line, the line of the page with carets under the span, and the help.</summary>
    /// <param name="diagnostic">What to show.</param>
    /// <param name="folder">The folder it was found in; a page that is not there is shown without its line.</param>
    /// <param name="root">Put before the path so that an editor can open it, for example <c>content/</c>.</param>
    public static string Render(Diagnostic diagnostic, ContentFolder folder, string root = "")
    {
        SourceSpan at = diagnostic.At;
        string severity = diagnostic.Severity == Severity.Error ? "error" : "warning";
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture,
            $"{root}{at.Path}:{at.Line}:{at.Column}: {severity}[{diagnostic.Name}]: {diagnostic.Message}\n");
        string gutter = new(' ', at.Line.ToString(CultureInfo.InvariantCulture).Length + 1);
        string? line = LineOf(folder, at);
        if (line is not null)
        {
            string marks = new string(' ', at.Column - 1) + new string('^', Math.Max(1, at.Length));
            text.Append(CultureInfo.InvariantCulture, $"{gutter}|\n{at.Line} | {line.TrimEnd()}");
            text.Append(CultureInfo.InvariantCulture, $"\n{gutter}| {marks}\n");
        }

        if (diagnostic.Help is not null)
        {
            text.Append(CultureInfo.InvariantCulture, $"{gutter}= help: {diagnostic.Help}\n");
        }

        return text.ToString();
    }

    private static string? LineOf(ContentFolder folder, SourceSpan at)
    {
        return folder.File(at.Path)?.Text.Split('\n').ElementAtOrDefault(at.Line - 1)?.Replace('\t', ' ');
    }
}
