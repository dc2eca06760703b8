using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using DxAssistant.Benchmarks.Ratios;

namespace DxAssistant.Benchmarks.Planning;

/// <summary>Cost against faults, both on scales of equal factors, as SVG.</summary>
internal static class GrowthChart
{
    private const double Left = 70, Right = 620, Top = 30, Bottom = 330;

    public static string Svg(ImmutableArray<GrowthPoint> points, Figure baseline)
    {
        ImmutableArray<(double Faults, double Times)> shown =
            [.. points.Select(point => ((double)point.Faults, point.Cost.Nanoseconds / baseline.Nanoseconds))];
        int low = Power(shown.Min(point => point.Times)), high = Power(shown.Max(point => point.Times)) + 1;
        double Y(double times) => Bottom - (Math.Log10(times) - low) / (high - low) * (Bottom - Top);
        var svg = new StringBuilder();
        svg.Append(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"-12 0 672 390\" font-family=\"sans-serif\" "
                + "font-size=\"13\">\n");
        svg.Append("<title>Cost of one plan, times the baseline, against the number of faults</title>\n");
        svg.Append("<rect x=\"-12\" width=\"672\" height=\"390\" fill=\"#fff\"/>\n");
        for (var power = low; power <= high; power++)
            Rule(svg, Y(Math.Pow(10, power)), Math.Pow(10, power)
                .ToString("#,##0.##", CultureInfo.InvariantCulture) + "×");
        foreach (var (faults, _) in shown)
            Write(svg, X(faults), Bottom + 20, "middle", faults.ToString("0", CultureInfo.InvariantCulture));
        Write(svg, (Left + Right) / 2, Bottom + 44, "middle", "faults in question (half as many checks again)");
        Write(svg, Left, Top - 12, "start", "one plan, times the baseline");
        Line(svg, shown.Select(point => (X(point.Faults), Y(point.Times))));
        foreach (var (faults, times) in shown)
            svg.Append(CultureInfo.InvariantCulture,
                $"<circle cx=\"{X(faults):0.0}\" cy=\"{Y(times):0.0}\" r=\"4\" fill=\"#14507a\"/>\n");
        return svg.Append("</svg>\n").ToString();
    }

    private static int Power(double times) => (int)Math.Floor(Math.Log10(times));

    // From 5 to 200 faults.
    private static double X(double faults) => Left + Math.Log(faults / 5) / Math.Log(40) * (Right - Left);

    private static void Rule(StringBuilder svg, double y, string label)
    {
        svg.Append(CultureInfo.InvariantCulture, $"<path d=\"M{Left:0} {y:0.0}H{Right:0}\" stroke=\"#ccc\"/>\n");
        Write(svg, Left - 8, y + 4, "end", label);
    }

    private static void Line(StringBuilder svg, IEnumerable<(double X, double Y)> places) => svg.Append(
        CultureInfo.InvariantCulture,
        $"<polyline points=\"{string.Join(' ', places.Select(place => string.Create(CultureInfo.InvariantCulture, $"{place.X:0.0},{place.Y:0.0}")))}\" fill=\"none\" stroke=\"#14507a\" stroke-width=\"2\"/>\n");

    private static void Write(StringBuilder svg, double x, double y, string anchor, string text) => svg.Append(
        CultureInfo.InvariantCulture,
        $"<text x=\"{x:0.0}\" y=\"{y:0.0}\" text-anchor=\"{anchor}\" fill=\"#222\">{text}</text>\n");
}
