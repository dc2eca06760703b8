using System.Globalization;
using System.Text;

namespace DxAssistant.Benchmarks.Ratios;

/// <summary>Figures as a Markdown table.</summary>
internal static class RatioTable
{
    public static string Text(string title, Figure baseline, IEnumerable<Figure> figures)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"# {title}\n\nBaseline, 1×: {baseline.Name} ");
        text.Append(CultureInfo.InvariantCulture, $"({baseline.Nanoseconds:0.0} ns on this machine in this run).\n\n");
        text.Append("| work | times the baseline | ± | allocated, bytes |\n|---|---:|---:|---:|\n");
        foreach (var figure in figures)
            Row(text, figure, baseline);
        return text.ToString();
    }

    private static void Row(StringBuilder text, Figure figure, Figure baseline) => text.Append(
        CultureInfo.InvariantCulture,
        $"| {figure.Name} | {figure.Nanoseconds / baseline.Nanoseconds:#,##0.0} | "
        + $"{100 * figure.ErrorNanoseconds / figure.Nanoseconds:0} % | {figure.AllocatedBytes:#,##0} |\n");
}
