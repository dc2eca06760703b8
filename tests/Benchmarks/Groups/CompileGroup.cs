using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Incremental;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>
/// Compiling a folder of pages whole, from 100 pages to 10,000, and again after an edit of one of them.
/// </summary>
internal sealed class CompileGroup : IBenchmarkGroup
{
    private const int Edits = 15;

    private static readonly ImmutableArray<int> Sizes = [100, 1_000, 3_000, 10_000];

    public string Name => "compile";

    public void Run(ResultFolder results)
    {
        var table = new StringBuilder(
            "Milliseconds on this machine; median of some runs. The last columns are what to hold on to: they compare runs of one session.\n\n"
            + "| pages | whole, ms | one edit, ms | slowest edit, ms | whole, µs a page | edit / whole "
            + "|\n|---|---|---|---|---|---|\n");
        foreach (int size in Sizes) table.Append(Row(size));
        results.Write("compile.md", table.ToString());
    }

    private static string Row(int size)
    {
        ContentFolder folder = GrowingFolder.Of(size);
        int pages = folder.Pages.Length;
        double[] whole = [.. Enumerable.Range(0, size > 3_000 ? 3 : 5)
            .Select(_ => Milliseconds(() => Clean(ContentCompiler.Compile(folder))))];
        var compiler = new IncrementalCompiler();
        Clean(compiler.Compile(folder));
        double[] edits = [.. Enumerable.Range(0, Edits).Select(edit =>
        {
            ContentFolder edited = GrowingFolder.Edited(folder, edit);
            return Milliseconds(() => Clean(compiler.Compile(edited)));
        })];
        double median = Median(whole), once = Median(edits);
        return string.Create(CultureInfo.InvariantCulture,
            $"| {pages} | {median:0} | {once:0.0} | {edits.Max():0.0} | {median * 1000 / pages:0} | {once / median:0.000} |\n");
    }

    private static void Clean(CompileResult result)
    {
        if (result.Library is null) throw new InvalidOperationException(result.Diagnostics[0].ToString());
    }

    private static double Milliseconds(Action work)
    {
        long start = Stopwatch.GetTimestamp();
        work();
        return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
    }

    private static double Median(double[] values) => values.Order().ElementAt(values.Length / 2);
}
