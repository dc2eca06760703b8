using DxAssistant.Bot.Tests.Load;
using DxAssistant.Conversation.Events;
using DxAssistant.Cases.Sqlite;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Benchmarks.Load;

/// <summary>
/// What cases cost that lie in the file and that nobody opens: start-up and memory, against an empty file.
/// </summary>
internal static class StoredCases
{
    // Eight entries of five hundred bytes, as a case has after its first message, copied under other names. Nobody
    // reads them, so that their hashes are of no account.
    private const string Fill = """
        WITH RECURSIVE number(n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM number WHERE n < $cases)
        INSERT INTO event (case_id, sequence, turn_id, at, body, aside, hash)
        SELECT 'stored-' || n, sequence, turn_id, at, body, aside, hash FROM number, (SELECT * FROM event WHERE case_id = 'stored') AS one;
        WITH RECURSIVE number(n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM number WHERE n < $cases)
        INSERT INTO turn SELECT 'stored-' || n, turn_id, first, last FROM number, (SELECT * FROM turn WHERE case_id = 'stored') AS one;
        WITH RECURSIVE number(n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM number WHERE n < $cases)
        INSERT INTO job SELECT 'stored-' || n, title, opened_at, last_at, last_event + n FROM number, (SELECT * FROM job WHERE id = 'stored') AS one;
        WITH RECURSIVE number(n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM number WHERE n < $cases)
        INSERT INTO work (case_id, title, series, fault, ended, opened_at, last_at, last_event, turns)
        SELECT 'stored-' || n, title, series, fault, ended, opened_at, last_at, last_event + n, turns FROM number, (SELECT * FROM work WHERE case_id = 'stored') AS one;
        """;

    public static async Task<string> MeasureAsync(int cases, int pairs)
    {
        var folder = Directory.CreateTempSubdirectory("dx-stored-");
        string empty = Path.Combine(folder.FullName, "empty.db"), full = Path.Combine(folder.FullName, "full.db");
        await FillAsync(full, cases);
        List<(double Start, double Memory)> without = [], with = [];
        for (int pair = 0; pair <= pairs; pair++)
        {
            without.Add(await StartAsync(empty));
            with.Add(await StartAsync(full));
        }

        double megabytes = new FileInfo(full).Length / 1e6;
        folder.Delete(recursive: true);

        // The first pair fills the caches of the system.
        double start = Middle(with, one => one.Start), startEmpty = Middle(without, one => one.Start);
        double memory = Middle(with, one => one.Memory), memoryEmpty = Middle(without, one => one.Memory);
        return FormattableString.Invariant($"""
            | file | start-up, ms | resident after the list and a turn, MB |
            |---|---:|---:|
            | empty | {startEmpty:0} | {memoryEmpty:0} |
            | {cases} cases, {megabytes:0} MB | {start:0} | {memory:0} |
            | ratio | {start / startEmpty:0.00} | {memory / memoryEmpty:0.00} |
            """);
    }

    private static double Middle(List<(double Start, double Memory)> all,
        Func<(double Start, double Memory), double> of) =>
        all.Skip(1).Select(of).Order().ElementAt((all.Count - 1) / 2);

    private static async Task<(double Start, double Memory)> StartAsync(string file)
    {
        await using var server = await ServerProcess.StartAsync("--data", file);
        using var client = new CaseClient(server.Address);
        string caseId = await client.OpenAsync();
        await client.PostAsync($"/api/cases/{caseId}/turns", """{"turnId":"t1","text":"the fan does not turn"}""");
        await client.GetAsync("/api/cases?limit=100");
        return (server.StartUp.TotalMilliseconds, server.ResidentBytes / 1e6);
    }

    private static async Task FillAsync(string file, int cases)
    {
        await using (var store = SqliteCaseStore.Open(file, TimeProvider.System))
            await store.AppendAsync("stored", 0, "t1",
                [.. Enumerable.Range(0, 8)
                    .Select(number => new NoteWritten("ann", new string((char)('a' + number), 400)))]);
        await using var connection = new SqliteConnection($"Data Source={file};Pooling=False");
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA synchronous = OFF;" + Fill;
        command.CommandTimeout = 0;
        command.Parameters.AddWithValue("$cases", cases);
        await command.ExecuteNonQueryAsync();
    }
}
