using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace DxAssistant.Benchmarks.Growing;

/// <summary>
/// How many times as much as in the smallest library, against faults, both on scales of equal factors, as SVG.
/// </summary>
internal static class LibraryChart
{
    private const double Left = 80, Right = 560, Top = 40, Bottom = 340;

    private static readonly ImmutableArray<(string Name, string Dashes, Func<LibraryPoint, double> Of)> Lines =
    [
        ("compile", "", it => it.Compile), ("library in memory", "8 4", it => it.Memory),
        ("words typed", "2 3", it => it.Words),
        ("answer tapped", "12 3 3 3", it => it.Tap), ("one page edited", "4 4", it => it.Edit),
    ];

    public static string Svg(ImmutableArray<LibraryPoint> points)
    {
        var one = points[0];
        double most = Math.Log10(Math.Max(10, Lines.Max(line => points.Max(it => line.Of(it) / line.Of(one))))), width =
            Math.Log10(points[^1].Faults / (double)one.Faults);
        double X(double faults) => Left + Math.Log10(faults / one.Faults) / width * (Right - Left);
        double Y(double times) => Bottom - Math.Log10(Math.Max(1, times)) / most * (Bottom - Top);
        var svg = new StringBuilder(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 740 400\" font-family=\"sans-serif\" "
                + "font-size=\"13\">\n");
        svg.Append(
            "<title>What a library costs, times the smallest, against its faults</title>\n<rect width=\"740\" "
                + "height=\"400\" fill=\"#fff\"/>\n");
        for (int power = 0; power <= most; power++)
            Rule(svg, Y(Math.Pow(10, power)), FormattableString.Invariant($"{Math.Pow(10, power):#,##0}×"));
        foreach (var it in points)
            Write(svg, X(it.Faults), Bottom + 20, "middle", it.Faults.ToString("#,##0", CultureInfo.InvariantCulture));
        Write(svg, (Left + Right) / 2, Bottom + 44, "middle", "faults in the library");
        Write(svg, Left, Top - 16, "start", FormattableString.Invariant($"times what {one.Faults} faults take"));
        double below = double.MinValue;
        foreach (var (name, dashes, of) in Lines.OrderByDescending(line => line.Of(points[^1]) / line.Of(one)))
        {
            Line(svg, dashes, points.Select(it => (X(it.Faults), Y(of(it) / of(one)))));
            below = Math.Max(Y(of(points[^1]) / of(one)) + 4, below + 16);
            Write(svg, Right + 10, below, "start",
                FormattableString.Invariant($"{name} {of(points[^1]) / of(one):0.#}×"));
        }

        return svg.Append("</svg>\n").ToString();
    }

    private static void Rule(StringBuilder svg, double y, string label)
    {
        svg.Append(CultureInfo.InvariantCulture, $"<path d=\"M{Left:0} {y:0.0}H{Right:0}\" stroke=\"#ccc\"/>\n");
        Write(svg, Left - 8, y + 4, "end", label);
    }

    private static void Line(StringBuilder svg, string dashes, IEnumerable<(double X, double Y)> places) => svg.Append(
        CultureInfo.InvariantCulture,
        $"<polyline points=\"{string.Join(' ', places.Select(place => string.Create(CultureInfo.InvariantCulture, $"{place.X:0.0},{place.Y:0.0}")))}\" fill=\"none\" stroke=\"#14507a\" stroke-width=\"2\" stroke-dasharray=\"{dashes}\"/>\n");

    private static void Write(StringBuilder svg, double x, double y, string anchor, string text) => svg.Append(
        CultureInfo.InvariantCulture,
        $"<text x=\"{x:0.0}\" y=\"{y:0.0}\" text-anchor=\"{anchor}\" fill=\"#222\">{text}</text>\n");
}
