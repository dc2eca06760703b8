using DxAssistant.Knowledge.Pictures;
using DxAssistant.Knowledge.Pictures.Plans;

namespace DxAssistant.Server.Workbench.Drawing;

/// <summary>A picture of the pages as a file.</summary>
internal static class PlannedFile
{
    /// <param name="pages">Where the pages are, seen from the file: nothing, or a path that ends in a slash.</param>
    public static string Of(Planned drawn, string pages)
    {
        string svg = drawn.Svg.Replace("href=\"#", $"href=\"{Escaped(pages)}", StringComparison.Ordinal);
        return PictureFile.Of(drawn.IsPage ? OnA4(svg) : svg);
    }

    /// <summary>A name that tells pictures apart in one folder.</summary>
    public static string NameOf(PictureAsked asked) => string.Join('-', new[]
    {
        asked.Kind, asked.Series, asked.Kind == LibraryPictures.Coverage ? null : asked.Symptom,
        asked is { Kind: LibraryPictures.Walk, Checks: { } checks }
            ? FormattableString.Invariant($"{checks}-checks")
            : null, asked.Language,
    }.Where(part => !string.IsNullOrEmpty(part))) + ".svg";

    // The sheet of 190 mm by 277 mm with margins of 10 mm around it, so that it prints at its size; on other paper, or
    // where a printer adds margins, as large as fits on one page.
    private static string OnA4(string svg)
    {
        string sheet = svg.Replace(
            "viewBox=\"0 0 760 1108\"", "width=\"210mm\" height=\"297mm\" viewBox=\"-40 -40 840 1188\"",
            StringComparison.Ordinal);
        return sheet.Insert(sheet.IndexOf('>', StringComparison.Ordinal) + 1,
            "<style>@page{margin:0}@media print{:root{width:100vw;height:100vh}}</style>");
    }

    private static string Escaped(string path) => string.Join('/', path.Split('/').Select(Uri.EscapeDataString));
}
