using System.Diagnostics;
using System.Globalization;
using Npgsql;

namespace DxAssistant.Bot.Tests.Cases.Postgres;

/// <summary>A PostgreSQL server of this run's own, in a temporary folder, gone afterwards.</summary>
/// <remarks>The environment variable <c>DX_POSTGRES</c> names one that runs already.</remarks>
public sealed class PostgresServer : IAsyncLifetime
{
    private static readonly string? Given = Environment.GetEnvironmentVariable("DX_POSTGRES");
    private static readonly string? Programs = FindPrograms();

    private string folder = "";
    private string connection = Given ?? "";
    private int databases;

    /// <summary>Whether there is a server, or the programs to start one.</summary>
    public static bool IsThere => !string.IsNullOrEmpty(Given) || Programs is not null;

    /// <summary>Does something with a server that is there for nothing else.</summary>
    internal static async Task<T> UseAsync<T>(Func<PostgresServer, Task<T>> work)
    {
        var server = new PostgresServer();
        await server.InitializeAsync();
        try
        {
            return await work(server);
        }
        finally
        {
            await server.DisposeAsync();
        }
    }

    public Task InitializeAsync()
    {
        if (IsThere && string.IsNullOrEmpty(Given)) Start();
        return Task.CompletedTask;
    }

    public Task DisposeAsync()
    {
        NpgsqlConnection.ClearAllPools();
        if (folder.Length == 0) return Task.CompletedTask;
        Run("pg_ctl", "-D", $"{folder}/data", "-m", "immediate", "stop");
        Directory.Delete(folder, recursive: true);
        return Task.CompletedTask;
    }

    /// <summary>A part of the database with nothing in it.</summary>
    public string NewPlace()
    {
        string name = string.Create(
            CultureInfo.InvariantCulture, $"t{Environment.ProcessId}_{Interlocked.Increment(ref databases)}");
        using var open = new NpgsqlConnection(connection);
        open.Open();
        using var command = new NpgsqlCommand($"CREATE SCHEMA {name}", open);
        command.ExecuteNonQuery();
        return $"{connection};Search Path={name}";
    }

    /// <summary>Kills the server of this run and starts it again; whoever is connected is cut off.</summary>
    public void Restart()
    {
        if (folder.Length == 0) throw new InvalidOperationException("a server that others use is not killed");
        Run("pg_ctl", "-D", $"{folder}/data", "-l", $"{folder}/log", "-m", "immediate", "-w", "restart");
    }

    private void Start()
    {
        folder = Directory.CreateTempSubdirectory("dxassistant-pg-").FullName;
        if (Environment.IsPrivilegedProcess) Wait(Process.Start("chown", ["postgres:", folder]));
        int port = FreePort.Find();
        Run("initdb", "-D", $"{folder}/data", "-U", "dx", "--auth=trust", "--no-sync", "-E", "UTF8",
            "--locale=C.UTF-8");
        Run("pg_ctl", "-D", $"{folder}/data", "-l", $"{folder}/log", "-w",
            "-o", $"-c listen_addresses=127.0.0.1 -c fsync=off -p {port} -k {folder}", "start");
        connection = $"Host=127.0.0.1;Port={port};Username=dx;Database=postgres";
    }

    // The server and its programs refuse to be run as root.
    private void Run(string program, params string[] arguments)
    {
        string path = Path.Combine(Programs!, program);
        string[] line = Environment.IsPrivilegedProcess
            ? ["setpriv", "--reuid=postgres", "--regid=postgres", "--clear-groups", "--", path, .. arguments]
            : [path, .. arguments];
        var start = new ProcessStartInfo(line[0], line[1..])
        {
            WorkingDirectory = folder, RedirectStandardOutput = true,
        };
        using var process = Process.Start(start)!;

        // A started server holds on to the pipe: what it says is read, but its end is not waited for.
        process.OutputDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        while (!process.HasExited) Thread.Sleep(20);
        if (process.ExitCode != 0) throw new InvalidOperationException($"{program} ended with {process.ExitCode}");
    }

    private static void Wait(Process process)
    {
        process.WaitForExit();
        process.Dispose();
    }

    private static string? FindPrograms() => Directory.Exists("/usr/lib/postgresql")
        ? Directory.EnumerateDirectories("/usr/lib/postgresql").Order(StringComparer.Ordinal)
            .Select(version => Path.Combine(version, "bin"))
            .LastOrDefault(bin => File.Exists(Path.Combine(bin, "initdb")))
        : null;
}
