using System.Collections.Immutable;
using System.Globalization;
using System.Net;
using System.Text;

namespace DxAssistant.Cases.Figures;

/// <summary>Draws counts by month as bars in rows, one row a thing, so that nothing is told by colour alone.</summary>
public static class MonthPlot
{
    private const int Left = 190;
    private const int Column = 34;
    private const int Row = 44;
    private const int Bar = 28;
    private const int Top = 40;

    /// <param name="table">With month, thing and count in its first three columns.</param>
    /// <returns>SVG; the same bytes each time.</returns>
    public static string Draw(FigureTable table, string title)
    {
        ImmutableArray<string> months = [.. table.Rows.Select(row => row[0]).Distinct().Order(StringComparer.Ordinal)];
        ImmutableArray<string> things = [.. table.Rows.Select(row => row[1]).Distinct().Order(StringComparer.Ordinal)];
        int most = table.Rows.Select(Count).DefaultIfEmpty(1).Max();
        int width = Left + months.Length * Column + 20, height = Top + things.Length * Row + 30;
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height}\" font-family=\"sans-serif\" font-size=\"12\" fill=\"currentColor\">\n<title>{Safe(title)}</title>\n<text x=\"10\" y=\"20\" font-size=\"15\" font-weight=\"bold\">{Safe(title)}</text>\n");
        for (int i = 0; i < things.Length; i++) Label(svg, things[i], Top + i * Row + Bar, width);
        foreach (var row in table.Rows) Bars(svg, months.IndexOf(row[0]), things.IndexOf(row[1]), Count(row), most);
        for (int i = 0; i < months.Length; i++)
            svg.Append(CultureInfo.InvariantCulture,
                $"<text x=\"{Left + i * Column}\" y=\"{height - 8}\" font-size=\"10\">{months[i][2..]}</text>\n");
        return svg.Append("</svg>\n").ToString();
    }

    private static void Label(StringBuilder svg, string thing, int bottom, int width) => svg.Append(
        CultureInfo.InvariantCulture,
        $"<text x=\"10\" y=\"{bottom}\">{Safe(thing.Length == 0 ? "not said" : thing)}</text>\n<path d=\"M{Left} {bottom + 2} H{width - 10}\" stroke=\"currentColor\" stroke-width=\"0.5\"/>\n");

    private static void Bars(StringBuilder svg, int month, int thing, int count, int most)
    {
        double high = Math.Round((double)count / most * Bar, 1);
        int x = Left + month * Column, bottom = Top + thing * Row + Bar + 2;
        svg.Append(CultureInfo.InvariantCulture,
            $"<rect x=\"{x + 4}\" y=\"{bottom - high}\" width=\"{Column - 14}\" height=\"{high}\"/>\n<text x=\"{x + 4}\" y=\"{bottom - high - 2}\" font-size=\"10\">{count}</text>\n");
    }

    private static int Count(ImmutableArray<string> row) => int.Parse(row[2], CultureInfo.InvariantCulture);

    private static string Safe(string text) => WebUtility.HtmlEncode(text);
}
