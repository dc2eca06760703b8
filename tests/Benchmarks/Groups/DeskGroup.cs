using System.Collections.Immutable;
using System.Data.Common;
using System.Diagnostics;
using System.Globalization;
using DxAssistant.Benchmarks.Desk;
using DxAssistant.Benchmarks.Live;
using DxAssistant.Cases;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>
/// The desk at 1,000, 10,000 and 100,000 cases in both stores, beside reading one row of the same tables by its key.
/// </summary>
/// <remarks>
/// <c>DX_CASES</c> says how many at most instead; <c>DX_POSTGRES</c> names an empty database, without it that store is
/// left out; <c>DX_DESK_FILE</c> keeps the file of cases there.
/// </remarks>
internal sealed class DeskGroup : IBenchmarkGroup
{
    private const int Usual = 100_000;
    private static readonly ImmutableArray<int> Sizes = [1_000, 10_000, 100_000];

    public string Name => "desk";

    public void Run(ResultFolder results)
    {
        int most = int.TryParse(Environment.GetEnvironmentVariable("DX_CASES"), CultureInfo.InvariantCulture,
            out int said) ? said : Usual;
        ImmutableArray<int> sizes = [.. Sizes.Where(size => size < most), most];
        string? kept = Environment.GetEnvironmentVariable("DX_DESK_FILE");
        string file = kept ?? Path.Combine(Directory.CreateTempSubdirectory("dx-desk-").FullName, "cases.db");
        results.Keep("desk.md", Head() + MeasureAsync(sizes, file).GetAwaiter().GetResult());
        if (kept is null) Directory.Delete(Path.GetDirectoryName(file)!, recursive: true);
    }

    private static string Head() => $"""
        # The desk at many cases

        `dotnet run -c Release --project tests/Benchmarks -- desk` with an empty database in `DX_POSTGRES`. {Machine.Conditions()}
        Ten turns a case. Each asked 30 times after one that is not counted: median in milliseconds, (slowest), and how many times what
        the first line took at the same size. A desk types with 100 ms between two keys.


        """;

    private static async Task<string> MeasureAsync(ImmutableArray<int> sizes, string file)
    {
        var clock = TimeProvider.System;
        await using var inFile = await new CasePlace.InFile(file).OpenAsync(clock);
        string text = await GrowAsync("SQLite", inFile, sizes, cases => DeskCases.WriteAsync(inFile, cases),
            () => new SqliteConnection($"Data Source={file};Mode=ReadOnly"),
            $"SELECT title FROM work WHERE case_id = '{DeskCases.Id(333)}'");
        if (Environment.GetEnvironmentVariable("DX_POSTGRES") is not { Length: > 0 } database)
            return text + "\nPostgreSQL was left out: DX_POSTGRES names no database.\n";
        await using var inDatabase = await new CasePlace.InDatabase(database).OpenAsync(clock);
        return text + "\n" + await GrowAsync("PostgreSQL", inDatabase, sizes,
            cases => DeskCases.CopyAsync(inFile, inDatabase, cases),
            () => new NpgsqlConnection(database), $"SELECT title FROM job WHERE id = '{DeskCases.Id(333)}'");
    }

    private static async Task<string> GrowAsync(
        string name, ICaseStore store, ImmutableArray<int> sizes, Func<Range, Task> fill, Func<DbConnection> bare,
        string byKey)
    {
        var times = new DeskTimes(bare, byKey);
        var seconds = new List<string>();
        int there = 0;
        foreach (int size in sizes)
        {
            long began = Stopwatch.GetTimestamp();
            await fill(there..size);
            seconds.Add(FormattableString.Invariant($"{Stopwatch.GetElapsedTime(began).TotalSeconds:0} s"));
            Console.Error.WriteLine($"{name}: {size} cases, filled in {seconds[^1]}");
            await times.MeasureAsync(store, size);
            there = size;
        }

        return $"## {name}\n{times.Table()}\nFilled in {string.Join(", ", seconds)}; {Machine.Load()} at the end.\n";
    }
}
