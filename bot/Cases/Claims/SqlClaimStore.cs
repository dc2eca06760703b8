using System.Collections.Immutable;
using System.Data.Common;
using System.Text.Json;

namespace DxAssistant.Cases.Claims;

/// <summary>
/// Claims in tables of a database, in SQL that SQLite and PostgreSQL read alike. One connection, one user of it
/// at a time: claims change seldom.
/// </summary>
public sealed class SqlClaimStore : IClaimStore
{
    private const string What = "claims";
    private readonly SharedConnection shared;

    private SqlClaimStore(SharedConnection shared) => this.shared = shared;

    /// <summary>Claims beside the cases of a SQLite file.</summary>
    /// <exception cref="CaseFileException">The file cannot be used.</exception>
    public static SqlClaimStore Open(string file) => new(SharedConnection.ToFile(file, ClaimSql.Tables, What));

    /// <summary>Claims that last as long as the program.</summary>
    public static SqlClaimStore InMemory() => new(SharedConnection.ToMemory(ClaimSql.Tables, What));

    /// <param name="connection">Of SQLite or PostgreSQL; not open yet.</param>
    /// <exception cref="CaseFileException">The database cannot be used.</exception>
    public static SqlClaimStore Open(DbConnection connection) =>
        new(new SharedConnection(connection, ClaimSql.Tables, What));

    public Task<bool> AppendAsync(Claim after, string? news, CancellationToken cancel = default) =>
        shared.WholeAsync(async run =>
        {
            var entry = after.Log[^1];
            int added = await run(
                ClaimSql.AddEntry,
                [after.Id, entry.Sequence, Time(entry.At), entry.By, ClaimJson.Write(entry.Event), entry.Hash]);
            if (added == 0) return false;
            await run(ClaimSql.SetHead, [after.Id, after.Case, after.State.ToString(), Time(entry.At)]);
            if (news is not null) await run(ClaimSql.AddNotice, [after.Id, entry.Sequence, news, Time(entry.At)]);
            return true;
        }, cancel);

    public Task<ImmutableArray<ClaimEntry>> ReadAsync(string claim, CancellationToken cancel = default) =>
        shared.RowsAsync(ClaimSql.ReadEntries, Entry, cancel, claim);

    public Task<ImmutableArray<ClaimHead>> ListAsync(
        ClaimState? state = null, string? ofCase = null, int limit = 1000, ClaimPlace? after = null,
        CancellationToken cancel = default) =>
        shared.RowsAsync(
            ClaimSql.List, Head, cancel, state?.ToString() ?? "", ofCase ?? "", limit,
            after is null ? long.MaxValue : Time(after.At), after?.Id ?? "");

    public Task<ImmutableArray<ClaimNotice>> DueAsync(DateTimeOffset now, int limit,
        CancellationToken cancel = default) =>
        shared.RowsAsync(ClaimSql.Due, Notice, cancel, Time(now), limit);

    public Task ToldAsync(ClaimNotice notice, CancellationToken cancel = default) =>
        shared.RunAsync(ClaimSql.Told, cancel, notice.Claim, notice.Sequence);

    public Task PutOffAsync(ClaimNotice notice, DateTimeOffset until, CancellationToken cancel = default) =>
        shared.RunAsync(ClaimSql.PutOff, cancel, notice.Claim, notice.Sequence, Time(until));

    public ValueTask DisposeAsync() => shared.DisposeAsync();

    private static ClaimEntry Entry(DbDataReader row)
    {
        try
        {
            return new ClaimEntry(
                row.GetInt64(0), TimeOf(row, 1), row.GetString(2), ClaimJson.Read(row.GetString(3)), row.GetString(4));
        }
        catch (Exception error) when (error is JsonException or NotSupportedException)
        {
            throw new CaseFileException(
                $"entry {row.GetInt64(0)} of a claim cannot be read: use the program that wrote it", error);
        }
    }

    private static ClaimHead Head(DbDataReader row) =>
        new(row.GetString(0), row.GetString(1), Enum.Parse<ClaimState>(row.GetString(2)), TimeOf(row, 3));

    private static ClaimNotice Notice(DbDataReader row) =>
        new(row.GetString(0), row.GetInt64(1), row.GetString(2), (int)row.GetInt64(3));

    private static long Time(DateTimeOffset at) => at.ToUnixTimeMilliseconds();

    private static DateTimeOffset TimeOf(DbDataReader row, int column) =>
        DateTimeOffset.FromUnixTimeMilliseconds(row.GetInt64(column));
}
