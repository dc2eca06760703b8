using System.Collections.Immutable;
using System.Diagnostics;
using System.Text;
using DxAssistant.Benchmarks.Live;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Incremental;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>
/// From the save of one page until preview, browser and server answer with it, from 1,000 pages to 10,000, beside the
/// compile alone and a whole compile of the same run.
/// </summary>
internal sealed class IncrementalGroup : IBenchmarkGroup
{
    private const int Edits = 40;
    private const int Whole = 5;

    // One size alone by DX_PAGES: its rows are kept, and the page is written from the last run of each size.
    private static readonly ImmutableArray<int> All = [1_000, 3_000, 10_000];

    private static readonly ImmutableArray<int> Sizes =
        int.TryParse(Environment.GetEnvironmentVariable("DX_PAGES"), out int size) && All.Contains(size) ? [size] : All;

    public string Name => "incremental";

    public void Run(ResultFolder results)
    {
        foreach (int size in Sizes) results.KeepPiece(Piece(size), Rows(size));
        results.Keep("incremental.md",
            Page([.. All.Select(size => results.Piece(Piece(size))).OfType<string>().Select(IncrementalRows.Of)]));
    }

    private static string Page(ImmutableArray<IncrementalRows> rows)
    {
        var table = new StringBuilder($"""
            # From a save to the new page

            Milliseconds from the end of a write: median, the middle half of the runs in brackets, and the slowest, of {Edits} edits of one
            page each. Of four edits one changes a sentence, one minutes, one a likelihood, one a title.
            - Compile: the incremental compile alone, in memory.
            - Preview: until a client has been told of it, has fetched the page and the first step of a walk on it, over HTTP.
            - Browser: until Chromium shows the new page; - where there is no Chromium.
            - Server: until the first turn of a case is answered on the new version. Words: until typed words are; the search is
              made anew in the background when an edit changes words that it reads (here: the titles).
            - Whole: reading and compiling the folder anew, as a program does that keeps nothing; the baseline of the same run.

            A save is compiled at once and put in use when the folder has been quiet for 50 ms, since editors write in several steps: no
            figure but the compile can be below 50.

            `dotnet run -c Release --project tests/Benchmarks -- incremental` writes this page; `DX_PAGES=10000` before it times one size
            anew and leaves the rows of the others, each from its own last run.

            | pages | machine |
            |---:|---|
            {string.Join('\n', rows.Select(row => $"| {row.Pages} | {row.Conditions} |"))}

            | pages | compile | preview | browser | server | words | whole | compile / whole | preview / whole |
            |---:|---:|---:|---:|---:|---:|---:|---:|---:|

            """);
        table.AppendJoin("", rows.Select(row => row.Row + "\n")).Append($"""

            What held the slowest save of each up, milliseconds: took / its threads were ready and had no processor, summed over the
            threads (other programs had them, or the program has more to do at once than there are processors) / the garbage
            collector stopped all threads.

            | pages | compile | preview | browser | server |
            |---:|---:|---:|---:|---:|

            """).AppendJoin("", rows.Select(row => row.Slowest + "\n"));
        return table.ToString();
    }

    private static string Piece(int size) => FormattableString.Invariant($"incremental-{size}.txt");

    private static string Rows(int size)
    {
        string conditions = Machine.Conditions();
        using var folder = new GrowingFolderOnDisk(size);
        folder.CompileWhole();
        Spread whole =
            Spread.Of(Enumerable.Range(0, Whole).Select(_ => Timing.Of(() => Milliseconds(folder.CompileWhole))));
        Spread compile = Compiled(size), preview = Previewed(folder);
        Spread? browser = Browsed(folder);
        (Spread turn, Spread words) = Served(folder);
        return new IncrementalRows(
            folder.Count, $"{conditions} At the end: {Machine.Load()}.",
            FormattableString.Invariant(
                $"| {folder.Count} | {compile} | {preview} | {browser?.ToString() ?? "-"} | {turn} | {words} ")
                + FormattableString.Invariant(
                    $"| {whole} | {compile.Median / whole.Median:0.000} | {preview.Median / whole.Median:0.000} |"),
            $"| {folder.Count} | {compile.Slowest} | {preview.Slowest} | {browser?.Slowest.ToString() ?? "-"} | {turn.Slowest} |").ToString();
    }

    private static Spread Compiled(int size)
    {
        ContentFolder folder = GrowingFolder.Of(size);
        var compiler = new IncrementalCompiler();
        compiler.Compile(folder);
        return Spread.Of(Enumerable.Range(0, Edits).Select(edit =>
        {
            folder = GrowingFolder.Edited(folder, edit);
            return Timing.Of(() => Milliseconds(() => compiler.Compile(folder)));
        }));
    }

    private static Spread Previewed(GrowingFolderOnDisk folder)
    {
        using var live = new LivePreview(folder.Path);
        return Spread.Of(Enumerable.Range(0, Edits).Select(edit => Timing.Of(() => live.Edit(folder, edit))));
    }

    private static Spread? Browsed(GrowingFolderOnDisk folder)
    {
        if (!File.Exists(LiveBrowser.Chromium)) return null;
        using var preview = new LivePreview(folder.Path);
        using var browser = new LiveBrowser(preview.Address);
        return Spread.Of(Enumerable.Range(Edits, Edits).Select(edit => Timing.Of(() => browser.Edit(folder, edit))));
    }

    private static (Spread Turn, Spread Words) Served(GrowingFolderOnDisk folder)
    {
        using var live = new LiveServer(folder.Path);
        (Timing Turn, Timing Words)[] all = [.. Enumerable.Range(2 * Edits, Edits).Select(edit =>
        {
            double words = 0;
            Timing turn = Timing.Of(() =>
            {
                (double first, words) = live.Edit(folder, edit);
                return first;
            });
            return (turn, turn with { Milliseconds = words });
        })];
        return (Spread.Of(all.Select(each => each.Turn)), Spread.Of(all.Select(each => each.Words)));
    }

    private static double Milliseconds(Action work)
    {
        long start = Stopwatch.GetTimestamp();
        work();
        return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
    }
}
