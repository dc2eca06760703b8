using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using DxAssistant.Benchmarks.Live;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>From the save of one page until preview and server answer with it, from 1,000 pages to 10,000, against reading
/// and compiling the whole folder in the same run.</summary>
internal sealed class LiveGroup : IBenchmarkGroup
{
    private const int Edits = 20;

    // Of these edits each fourth changes a title, which the search reads.
    private static readonly ImmutableArray<int> Sizes = [1_000, 3_000, 10_000];

    public string Name => "live";

    public void Run(ResultFolder results)
    {
        var table = new StringBuilder("""
            # From a save to the new page

            Median and slowest of 20 edits of one page each, milliseconds on this machine; 50 of them are waited on purpose, because
            editors write a file in several steps. Of four edits one changes a sentence, one minutes, one a likelihood, one a title.
            - Preview: from the end of the write until the browser has been told, has fetched the page and the first step of a walk
              on it, over HTTP.
            - Server: until the first turn of a case is answered on the new version. Words: until typed words are; the search is
              made anew in the background only when an edit changes words that it reads (here: the titles).
            - The baseline of the same run: reading and compiling the whole folder anew, as a program does that keeps nothing.

            `dotnet run -c Release --project tests/Benchmarks -- live` makes this table.

            | pages | preview, ms | slowest | server, ms | slowest | words, ms | slowest | whole, ms | preview / whole | server / whole |
            |---:|---:|---:|---:|---:|---:|---:|---:|---:|---:|

            """);
        foreach (int size in Sizes) table.Append(Row(size));
        results.Write("live.md", table.ToString());
    }

    private static string Row(int size)
    {
        using var folder = new GrowingFolderOnDisk(size);
        double whole = Median([.. Enumerable.Range(0, 3).Select(_ => Milliseconds(folder.CompileWhole))]);
        double[] preview = Previewed(folder);
        (double Turn, double Words)[] server = Served(folder);
        double turn = Median([.. server.Select(each => each.Turn)]), words = Median([.. server.Select(each => each.Words)]);
        return string.Create(CultureInfo.InvariantCulture,
            $"| {folder.Count} | {Median(preview):0} | {preview.Max():0} | {turn:0} | {server.Max(each => each.Turn):0} | {words:0} | {server.Max(each => each.Words):0} | {whole:0} | {Median(preview) / whole:0.000} | {turn / whole:0.000} |\n");
    }

    private static double[] Previewed(GrowingFolderOnDisk folder)
    {
        using var live = new LivePreview(folder.Path);
        return [.. Enumerable.Range(0, Edits).Select(edit => live.Edit(folder, edit))];
    }

    private static (double Turn, double Words)[] Served(GrowingFolderOnDisk folder)
    {
        using var live = new LiveServer(folder.Path);
        return [.. Enumerable.Range(Edits, Edits).Select(edit => live.Edit(folder, edit))];
    }

    private static double Milliseconds(Action work)
    {
        long start = Stopwatch.GetTimestamp();
        work();
        return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
    }

    private static double Median(double[] values) => values.Order().ElementAt(values.Length / 2);
}
