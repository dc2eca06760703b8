using System.Collections.Immutable;
using System.Data;
using System.Data.Common;
using DxAssistant.Cases.Sqlite;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases;

/// <summary>One connection to SQLite or PostgreSQL with one user at a time, for records that change seldom.</summary>
internal sealed class SharedConnection : IAsyncDisposable
{
    // Longer than one user may be waiting for the database: who comes behind several of them is told so.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private readonly SemaphoreSlim turn = new(1);
    private readonly DbConnection connection;
    private readonly string what;

    /// <param name="connection">Not open yet.</param>
    /// <param name="first">Run once, such as what makes the tables.</param>
    /// <param name="what">What is kept in it, for messages.</param>
    /// <exception cref="CaseFileException">The database cannot be used.</exception>
    public SharedConnection(DbConnection connection, string first, string what)
    {
        (this.connection, this.what) = (connection, what);
        try
        {
            connection.Open();
            using var command = Command(null, Alone + first, []);
            command.ExecuteNonQuery();
        }
        catch (Exception error) when (StoreTrouble.Is(error, CancellationToken.None))
        {
            connection.Dispose();
            throw Unusable(error);
        }
    }

    // Several servers may start at once; one of them makes the tables. The number is this program's own.
    private string Alone => connection is Npgsql.NpgsqlConnection ? "SELECT pg_advisory_xact_lock(7305812);" : "";

    /// <summary>Beside the cases of a SQLite file, as safe on disk as they are.</summary>
    public static SharedConnection ToFile(string file, string tables, string what) => new(
        new SqliteConnection(new SqliteConnectionStringBuilder
        {
            DataSource = file, Pooling = false, DefaultTimeout = 10,
        }.ToString()),
        "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA secure_delete = ON;" + tables, what);

    /// <summary>Lasts as long as the program.</summary>
    public static SharedConnection ToMemory(string tables, string what) =>
        new(new SqliteConnection("Data Source=:memory:"), tables, what);

    /// <summary>Does several things, or none of them when false is returned or something is thrown.</summary>
    /// <param name="work">Given what runs a statement with its values and says how many rows it changed.</param>
    public Task<bool> WholeAsync(Func<Func<string, object[], Task<int>>, Task<bool>> work, CancellationToken cancel) =>
        InTurnAsync(async () =>
        {
            await using var whole = await connection.BeginTransactionAsync(cancel);
            if (!await work((sql, values) => RunAsync(whole, sql, values))) return false;
            await whole.CommitAsync(cancel);
            return true;
        }, cancel);

    public Task<int> RunAsync(string sql, CancellationToken cancel, params object[] values) =>
        InTurnAsync(() => RunAsync(null, sql, values), cancel);

    public Task<ImmutableArray<T>> RowsAsync<T>(
        string sql, Func<DbDataReader, T> read, CancellationToken cancel, params object[] values) =>
            InTurnAsync(async () =>
    {
        await using var command = Command(null, sql, values);
        await using var rows = await command.ExecuteReaderAsync(cancel);
        var all = ImmutableArray.CreateBuilder<T>();
        while (await rows.ReadAsync(cancel)) all.Add(read(rows));
        return all.ToImmutable();
    }, cancel);

    /// <summary>What was removed is not to linger in the journal of a file.</summary>
    public Task TidyAsync(CancellationToken cancel) =>
        connection is SqliteConnection
            ? RowsAsync("PRAGMA wal_checkpoint(TRUNCATE)", _ => 0, cancel)
            : Task.CompletedTask;

    public async ValueTask DisposeAsync()
    {
        await connection.DisposeAsync();
        turn.Dispose();
    }

    private async Task<int> RunAsync(DbTransaction? whole, string sql, object[] values)
    {
        await using var command = Command(whole, sql, values);
        return await command.ExecuteNonQueryAsync();
    }

    private DbCommand Command(DbTransaction? whole, string sql, object[] values)
    {
        var command = connection.CreateCommand();
        command.Transaction = whole;
        command.CommandText = sql;
        for (int i = 0; i < values.Length; i++)
        {
            var parameter = command.CreateParameter();
            (parameter.ParameterName, parameter.Value) = (FormattableString.Invariant($"p{i}"), values[i]);
            command.Parameters.Add(parameter);
        }

        return command;
    }

    private async Task<T> InTurnAsync<T>(Func<Task<T>> work, CancellationToken cancel)
    {
        if (!await turn.WaitAsync(Patience, cancel))
            throw new CaseFileException($"the {what} cannot be used (it is held up): {StoreTrouble.Remedy}");
        try
        {
            if (connection.State != ConnectionState.Open) await connection.OpenAsync(cancel);
            return await work();
        }
        catch (Exception error) when (StoreTrouble.Is(error, connection, cancel))
        {
            throw Unusable(error);
        }
        finally
        {
            turn.Release();
        }
    }

    private CaseFileException Unusable(Exception error) => SqliteTrouble.Of($"the {what} cannot be used", error);
}
