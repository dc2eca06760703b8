using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Benchmarks.Ratios;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Cases.WorkList;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>The work list at 100,000 cases, against reading one row of the same table by its key.</summary>
internal sealed class DeskGroup : RatioGroup
{
    private const int Cases = 100_000;

    private static readonly string[] Series = ["brenholt-ws", "tarn-duo", "ostvik-lc", "veldarn-nord"];
    private static readonly string[] Complaints =
        ["does not heat", "water drips from the unit", "code b4 on the display", "fan is loud", "trips the breaker"];

    private readonly Lazy<string> file = new(() => FillAsync().GetAwaiter().GetResult());
    private SqliteCaseStore? opened;

    public override string Name => "desk";

    protected override string Title => "The work list at 100,000 cases";

    protected override Workload Baseline => new("one row by its key", ByKey);

    protected override ImmutableArray<Workload> Workloads =>
    [
        new("newest 100", () => Search(new WorkQuery())),
        new("open ones of one unit", () => Search(new WorkQuery(Series: Series[1], Open: true))),
        new("by unit", () => Search(new WorkQuery(Order: WorkOrder.Series))),
        new("a serial", () => Search(new WorkQuery("SN-0054321"))),
        new("a serial, half typed", () => Search(new WorkQuery("sn-00543"))),
        new("a telephone number", () => Search(new WorkQuery("555 0100 4321"))),
        new("two words of a fifth of all cases", () => Search(new WorkQuery("water drips"))),
        new("three letters of a fifth of all cases", () => Search(new WorkQuery("wat"))),
        new("a word nowhere", () => Search(new WorkQuery("gyroscope"))),
    ];

    private SqliteCaseStore Store => opened ??= SqliteCaseStore.Open(file.Value, TimeProvider.System);

    private ImmutableArray<WorkLine> Search(WorkQuery query) => Store.SearchAsync(query).GetAwaiter().GetResult().Lines;

    private object? ByKey()
    {
        using var reader = new SqliteConnection($"Data Source={file.Value};Mode=ReadOnly");
        reader.Open();
        using var command = reader.CreateCommand();
        command.CommandText = "SELECT title FROM work WHERE case_id = 'case-54321'";
        return command.ExecuteScalar();
    }

    private static async Task<string> FillAsync()
    {
        string path = Path.Combine(Directory.CreateTempSubdirectory("dx-desk-").FullName, "cases.db");
        await using var store = SqliteCaseStore.Open(path, TimeProvider.System);
        for (int from = 0; from < Cases; from += 1000)
            await Task.WhenAll(Enumerable.Range(from, 1000).Select(number => store.AppendAsync(
                Text($"case-{number}"), 0, "t1", EventsOf(number))));
        return path;
    }

    private static ImmutableArray<CaseEvent> EventsOf(int number) =>
    [
        new Opened("v1"),
        new Said("t1", "technician", new MessageBody.Words(Text(
            $"{Complaints[number % 5]}, serial SN-{number:0000000}, call back 555 0100 {number % 10000:0000}"))),
        new SeriesChosen(Series[number % 4]),
        new SymptomReported($"symptom-{number % 60}", 1, Complaints[number % 5]),
        .. number % 3 == 0 ? [new Closed("repaired")] : ImmutableArray<CaseEvent>.Empty,
    ];

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
