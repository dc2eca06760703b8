using System.Security.Cryptography;
using System.Threading.Channels;
using Npgsql;

namespace DxAssistant.Cases.Postgres;

/// <summary>Word of changed cases by LISTEN and NOTIFY.</summary>
/// <remarks>
/// Told once a turn is committed, many cases at a time, and not within the turns' own transactions: those that notify
/// are committed one after another (source, from memory: PostgreSQL, src/backend/commands/async.c, the lock around the
/// queue).
/// </remarks>
internal sealed class PostgresNews : ICaseNews, IAsyncDisposable
{
    private const string Listen = "LISTEN dx_case";
    private const string Notify = "SELECT pg_notify('dx_case', $1 || one) FROM unnest($2::text[]) AS one";
    private const int MostAtOnce = 500;
    private const int MostUntold = 10_000;

    // A connection that is cut off without a word is noticed by asking something on it.
    private static readonly TimeSpan Quiet = TimeSpan.FromSeconds(10);
    private static readonly TimeSpan Again = TimeSpan.FromSeconds(1);
    private const int AnswersWithinSeconds = 5;

    // Stands before each name: whoever tells need not hear it.
    private readonly string self = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(8));
    private readonly Channel<string> untold = Channel.CreateBounded<string>(new BoundedChannelOptions(MostUntold)
    {
        FullMode = BoundedChannelFullMode.DropOldest,
    });
    private readonly NpgsqlDataSource source;
    private readonly Task telling;
    private volatile bool hears;

    public PostgresNews(NpgsqlDataSource source)
    {
        this.source = source;
        telling = Task.Run(TellAllAsync);
    }

    public bool Hears => hears;

    public void Tell(string caseId) => untold.Writer.TryWrite(caseId);

    public async Task HearAsync(Action<string?> heard, CancellationToken cancel)
    {
        while (!cancel.IsCancellationRequested)
        {
            try
            {
                await HearUntilCutOffAsync(heard, cancel);
            }
            catch (Exception error) when (StoreTrouble.Is(error, cancel) || error is InvalidOperationException)
            {
                // Whoever waits for word asks the store meanwhile.
            }
            finally
            {
                hears = false;
                heard(null);
            }

            await Task.Delay(Again, cancel);
        }
    }

    public async ValueTask DisposeAsync()
    {
        untold.Writer.TryComplete();
        await telling;
    }

    private async Task HearUntilCutOffAsync(Action<string?> heard, CancellationToken cancel)
    {
        await using var connection = await source.OpenConnectionAsync(cancel);
        connection.Notification += (_, told) =>
        {
            if (!told.Payload.StartsWith(self, StringComparison.Ordinal) && told.Payload.Length > self.Length)
                heard(told.Payload[self.Length..]);
        };
        await AskAsync(connection, Listen, cancel);
        hears = true;
        heard(null);
        while (true)
            if (!await connection.WaitAsync(Quiet, cancel)) await AskAsync(connection, "SELECT 1", cancel);
    }

    private static async Task AskAsync(NpgsqlConnection connection, string sql, CancellationToken cancel)
    {
        await using var command = new NpgsqlCommand(sql, connection) { CommandTimeout = AnswersWithinSeconds };
        await command.ExecuteNonQueryAsync(cancel);
    }

    private async Task TellAllAsync()
    {
        var cases = new HashSet<string>(StringComparer.Ordinal);
        while (await untold.Reader.WaitToReadAsync())
        {
            while (cases.Count < MostAtOnce && untold.Reader.TryRead(out string? caseId)) cases.Add(caseId);
            await TellAsync([.. cases]);
            cases.Clear();
        }
    }

    private async Task TellAsync(string[] cases)
    {
        try
        {
            await using var command = source.CreateCommand(Notify);
            command.Parameters.Add(new NpgsqlParameter { Value = self });
            command.Parameters.Add(new NpgsqlParameter { Value = cases });
            await command.ExecuteNonQueryAsync();
        }
        catch (Exception error) when (StoreTrouble.Is(error, CancellationToken.None)
            || error is InvalidOperationException)
        {
            // The others find it when they ask the store.
        }
    }
}
