using System.Net;
using System.Threading.Channels;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace DxAssistant.Benchmarks.Load;

/// <summary>
/// The least a server can do that keeps what it is sent: one address, which appends the lines of its body as events of
/// a stream and answers once they are on disk. All waiting requests in one transaction, WAL, synchronous FULL.
/// </summary>
internal sealed class BareAppender : IAsyncDisposable
{
    /// <summary>The word by which this program is told to be that server.</summary>
    public const string Command = "bare";

    private const int MostInOneTransaction = 256;

    private readonly Channel<Waiting> waiting = Channel.CreateBounded<Waiting>(4096);
    private readonly SqliteConnection connection;
    private readonly SqliteCommand insert;
    private readonly Task writing;

    private BareAppender(string file)
    {
        connection = new SqliteConnection($"Data Source={file};Pooling=False");
        connection.Open();
        Run(
            "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; CREATE TABLE event (number INTEGER PRIMARY KEY, "
                + "stream TEXT NOT NULL, sequence INTEGER NOT NULL, body TEXT NOT NULL, UNIQUE (stream, sequence))");
        insert = connection.CreateCommand();
        insert.CommandText = "INSERT INTO event (stream, sequence, body) VALUES ($stream, $sequence, $body)";
        foreach (string name in new[] { "$stream", "$sequence", "$body" })
            insert.Parameters.Add(new SqliteParameter(name, null));
        insert.Prepare();
        writing = Task.Run(WriteAllAsync);
    }

    /// <summary>Serves until it is told to end.</summary>
    public static async Task<int> ServeAsync(string file)
    {
        await using var appender = new BareAppender(file);
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0));
        await using var app = builder.Build();
        app.MapPost("/append/{stream}/{sequence:long}", appender.AppendAsync);
        await app.StartAsync();
        await Console.Out.WriteLineAsync($"Open {app.Urls.First()}/");
        await app.WaitForShutdownAsync();
        return 0;
    }

    private async Task AppendAsync(string stream, long sequence, HttpRequest request)
    {
        using var reader = new StreamReader(request.Body);
        var mine = new Waiting(stream, sequence, (await reader.ReadToEndAsync()).Split('\n'));
        await waiting.Writer.WriteAsync(mine);
        await mine.Done.Task;
    }

    private async Task WriteAllAsync()
    {
        var batch = new List<Waiting>();
        while (await waiting.Reader.WaitToReadAsync())
        {
            while (batch.Count < MostInOneTransaction && waiting.Reader.TryRead(out var one)) batch.Add(one);
            Run("BEGIN IMMEDIATE");
            foreach (var one in batch) Write(one);
            Run("COMMIT");
            foreach (var one in batch) one.Done.SetResult();
            batch.Clear();
        }
    }

    private void Write(Waiting one)
    {
        for (int i = 0; i < one.Events.Length; i++)
        {
            insert.Parameters[0].Value = one.Stream;
            insert.Parameters[1].Value = one.Sequence + i;
            insert.Parameters[2].Value = one.Events[i];
            insert.ExecuteNonQuery();
        }
    }

    private void Run(string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    public async ValueTask DisposeAsync()
    {
        waiting.Writer.Complete();
        await writing;
        await insert.DisposeAsync();
        await connection.DisposeAsync();
    }

    private sealed record Waiting(string Stream, long Sequence, string[] Events)
    {
        public TaskCompletionSource Done { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);
    }
}
