using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace DxAssistant.Benchmarks.Matching;

/// <summary>Time of one message against pages, ours and plain, both on scales of equal factors, as SVG.</summary>
internal static class MatchingChart
{
    private const double Left = 80, Right = 600, Top = 40, Bottom = 330, LeastPages = 100, MostPages = 100_000;
    private const int LowPower = 0, HighPower = 6;

    public static string Svg(ImmutableArray<MatchingPoint> points)
    {
        var svg = new StringBuilder();
        svg.Append(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 720 390\" font-family=\"sans-serif\" "
                + "font-size=\"13\">\n");
        svg.Append(
            "<title>Time of one message against the number of pages</title>\n<rect width=\"720\" height=\"390\" "
                + "fill=\"#fff\"/>\n");
        for (var power = LowPower; power <= HighPower; power++)
            Rule(svg, power);
        foreach (var point in points)
            Write(svg, X(point.Pages), Bottom + 20, "middle",
                point.Pages.ToString("#,##0", CultureInfo.InvariantCulture));
        Write(svg, (Left + Right) / 2, Bottom + 44, "middle", "pages");
        Write(svg, Left, Top - 18, "start", "one message, µs");
        Curve(svg, points, "#14507a", "", "ours", -2, point => point.Ours.Nanoseconds);
        Curve(svg, points, "#7a4a14", " stroke-dasharray=\"6 4\"", "plain search", 12,
            point => point.Plain.Nanoseconds);
        return svg.Append("</svg>\n").ToString();
    }

    // The names stand apart though the lines end close together.
    private static void Curve(StringBuilder svg, ImmutableArray<MatchingPoint> points, string color, string dashes,
        string name, double drop, Func<MatchingPoint, double> time)
    {
        ImmutableArray<(double X, double Y)> places =
            [.. points.Select(point => (X(point.Pages), Y(time(point) / 1000 / MatchingRun.Messages)))];
        var line = string.Join(' ',
            places.Select(place => string.Create(CultureInfo.InvariantCulture, $"{place.X:0.0},{place.Y:0.0}")));
        svg.Append(CultureInfo.InvariantCulture,
            $"<polyline points=\"{line}\" fill=\"none\" stroke=\"{color}\" stroke-width=\"2\"{dashes}/>\n");
        foreach (var (x, y) in places)
            svg.Append(CultureInfo.InvariantCulture,
                $"<circle cx=\"{x:0.0}\" cy=\"{y:0.0}\" r=\"4\" fill=\"{color}\"/>\n");
        Write(svg, places[^1].X + 10, places[^1].Y + drop, "start", name);
    }

    private static double X(double pages) =>
        Left + (Math.Log(pages / LeastPages) / Math.Log(MostPages / LeastPages) * (Right - Left));

    private static double Y(double micros) =>
        Bottom - ((Math.Log10(micros) - LowPower) / (HighPower - LowPower) * (Bottom - Top));

    private static void Rule(StringBuilder svg, int power)
    {
        var y = Y(Math.Pow(10, power));
        svg.Append(CultureInfo.InvariantCulture, $"<path d=\"M{Left:0} {y:0.0}H{Right:0}\" stroke=\"#ccc\"/>\n");
        Write(svg, Left - 8, y + 4, "end", Math.Pow(10, power).ToString("#,##0", CultureInfo.InvariantCulture));
    }

    private static void Write(StringBuilder svg, double x, double y, string anchor, string text) => svg.Append(
        CultureInfo.InvariantCulture,
        $"<text x=\"{x:0.0}\" y=\"{y:0.0}\" text-anchor=\"{anchor}\" fill=\"#222\">{text}</text>\n");
}
