using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace DxAssistant.Benchmarks.Matching;

/// <summary>The cost of matching as a Markdown table.</summary>
internal static class MatchingTable
{
    public static string Text(ImmutableArray<MatchingPoint> points)
    {
        var text = new StringBuilder("# Cost of understanding one message as the content grows\n\n");
        text.Append(
            "Against one plain search (stock English analyzer, BM25, five best) over the same pages in the same run; ");
        text.Append(
            "`dotnet run -c Release --project tests/Benchmarks -- matching` makes this table. The shipped pages "
                + "are asked ");
        text.Append(
            "development phrases; the others are made up, with a fault on each page, two wordings and a body of twenty "
                + "words. ");
        text.Append("Past 512 faults nothing is learnt from the wordings: the search alone ranks.\n\n");
        text.Append("![Time of one message against pages](matching.svg)\n\n");
        text.Append(
            "Times are by the clock; processor times are the median of rounds in which both took turns, which other "
                + "work on the machine disturbs least.\n\n");
        text.Append(
            "| content | pages | one message, µs | plain search, µs | times | ± | processor times | made in, s | in "
                + "memory, MB |\n");
        text.Append("|---|---:|---:|---:|---:|---:|---:|---:|---:|\n");
        foreach (var point in points)
            Row(text, point);
        return text.ToString();
    }

    private static void Row(StringBuilder text, MatchingPoint point) => text.Append(
        CultureInfo.InvariantCulture,
        $"| {point.Name} | {point.Pages:#,##0} | {Micros(point.Ours.Nanoseconds):#,##0} | {Micros(point.Plain.Nanoseconds):#,##0} | {point.Times:0.0} | "
        + $"{100 * point.Ours.ErrorNanoseconds / point.Ours.Nanoseconds:0} % | {point.ProcessorTimes:0.0} | {point.BuildSeconds:0.0} | {point.Bytes / 1e6:#,##0} |\n");

    private static double Micros(double nanoseconds) => nanoseconds / 1000 / MatchingRun.Messages;
}
