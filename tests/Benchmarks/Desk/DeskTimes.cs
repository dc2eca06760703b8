using System.Data.Common;
using System.Diagnostics;
using System.Globalization;
using DxAssistant.Benchmarks.Live;
using DxAssistant.Cases;

namespace DxAssistant.Benchmarks.Desk;

/// <summary>What a desk waits for, in one store that grows.</summary>
/// <param name="bare">A connection of its own to the same tables.</param>
/// <param name="byKey">One row of the list by its key, in SQL.</param>
internal sealed class DeskTimes(Func<DbConnection> bare, string byKey)
{
    private const string Baseline = "one row by its key, on a connection opened for it";
    private const int Runs = 30;

    private readonly List<(string Name, List<Spread> Took)> rows = [];
    private readonly List<int> sizes = [];

    public async Task MeasureAsync(ICaseStore store, int cases)
    {
        sizes.Add(cases);
        await AddAsync(new DeskLook(Baseline, _ => ByKeyAsync()));
        foreach (var look in DeskLook.All(store, cases)) await AddAsync(look);
    }

    /// <summary>A row a look: median, slowest and how many times the bare row at each size.</summary>
    public string Table() => string.Join('\n',
    [
        $"| what | {string.Join(" | ", sizes.Select(size => size.ToString("#,0 'cases'", CultureInfo.InvariantCulture)))} |",
        $"|---|{string.Concat(sizes.Select(_ => "---|"))}",
        .. rows.Select(row =>
            $"| {row.Name} | {string.Join(" | ", row.Took.Select((took, size) => Cell(took, rows[0].Took[size])))} |"),
    ]) + "\n";

    private static string Cell(Spread took, Spread row) =>
        FormattableString.Invariant(
            $"{took.Median:0.00} ({took.Slowest.Milliseconds:0.0}), {took.Median / row.Median:0.0}×");

    private async Task AddAsync(DeskLook look)
    {
        await look.Run(Runs);
        var took = new List<Timing>();
        for (int run = 0; run < Runs; run++) took.Add(await OnceAsync(look, run));
        if (rows.Find(row => row.Name == look.Name) is not { Name: not null } known) rows.Add(known = (look.Name, []));
        known.Took.Add(Spread.Of(took));
    }

    private static async Task<Timing> OnceAsync(DeskLook look, int run)
    {
        var before = Held.Now();
        long began = Stopwatch.GetTimestamp();
        await look.Run(run);
        return new Timing(Stopwatch.GetElapsedTime(began).TotalMilliseconds, Held.Now() - before);
    }

    private async Task ByKeyAsync()
    {
        await using var connection = bare();
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
        command.CommandText = byKey;
        await command.ExecuteScalarAsync();
    }
}
