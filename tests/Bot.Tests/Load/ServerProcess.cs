using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace DxAssistant.Bot.Tests.Load;

/// <summary>The program itself in a process of its own, as an operator starts it, on a free port.</summary>
internal sealed class ServerProcess : IAsyncDisposable
{
    private static readonly string Program = Path.Combine(AppContext.BaseDirectory, "DxAssistant.Server.dll");

    private readonly Process process;
    private readonly StringBuilder said;

    private ServerProcess(Process process, Uri address, TimeSpan startUp, StringBuilder said) =>
        (this.process, Address, StartUp, this.said) = (process, address, startUp, said);

    public Uri Address { get; }

    /// <summary>From the start of the process until it says where it listens.</summary>
    public TimeSpan StartUp { get; }

    public int Id => process.Id;

    /// <summary>What it wrote on standard error so far.</summary>
    public string Said
    {
        get
        {
            lock (said) return said.ToString();
        }
    }

    /// <summary>Bytes of memory in use, as the system counts them.</summary>
    public long ResidentBytes => 1024 * long.Parse(
        File.ReadLines($"/proc/{process.Id}/status").First(line => line.StartsWith("VmRSS:", StringComparison.Ordinal))
            .Split(' ', StringSplitOptions.RemoveEmptyEntries)[1],
        CultureInfo.InvariantCulture);

    /// <summary>Open files, connections among them.</summary>
    public int Handles => Directory.GetFileSystemEntries($"/proc/{process.Id}/fd").Length;

    public int Threads => Directory.GetDirectories($"/proc/{process.Id}/task").Length;

    /// <summary>Seconds of a processor used so far.</summary>
    public double ProcessorSeconds
    {
        get
        {
            process.Refresh();
            return process.TotalProcessorTime.TotalSeconds;
        }
    }

    /// <summary>Starts the server on the shipped pages.</summary>
    /// <param name="arguments">Beyond content, port and pace: where the cases are kept.</param>
    /// <exception cref="InvalidOperationException">It ended instead; the message is what it said.</exception>
    public static Task<ServerProcess> StartAsync(params string[] arguments) => StartAsync(
        [Program, "--content", Repository.PathOf("content"), "--port", "0", "--pace", "0", .. arguments], "Open ");

    /// <summary>The same with the cases in PostgreSQL.</summary>
    public static Task<ServerProcess> StartOnAsync(string store, string data) =>
        StartAsync("--store", store, "--data", data);

    /// <summary>Starts any program that says on a line where it listens.</summary>
    /// <param name="arguments">What <c>dotnet exec</c> is given.</param>
    /// <param name="before">What stands on that line before the address.</param>
    public static Task<ServerProcess> StartAsync(string[] arguments, string before) =>
        StartAsync("dotnet", ["exec", .. arguments], before);

    /// <summary>Starts the server by another program, which becomes it.</summary>
    /// <param name="by">That program with its arguments; those of <c>dotnet</c> follow.</param>
    /// <exception cref="InvalidOperationException">It ended instead; the message is what it said.</exception>
    public static Task<ServerProcess> StartByAsync(string[] by, params string[] arguments) => StartAsync(
        by[0],
        [.. by[1..], "dotnet", "exec", Program, "--content", Repository.PathOf("content"), "--port", "0", "--pace", "0",
            .. arguments], "Open ");

    private static async Task<ServerProcess> StartAsync(string program, string[] arguments, string before)
    {
        long begun = Stopwatch.GetTimestamp();
        var start = new ProcessStartInfo(program, arguments)
        {
            RedirectStandardOutput = true, RedirectStandardError = true,
        };
        var process = Process.Start(start)!;
        var said = new StringBuilder();
        process.ErrorDataReceived += (_, line) =>
        {
            lock (said) said.AppendLine(line.Data);
        };
        process.BeginErrorReadLine();
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            if (!line.StartsWith(before, StringComparison.Ordinal)) continue;
            _ = process.StandardOutput.ReadToEndAsync();
            return new ServerProcess(process, new Uri(line[before.Length..].Split(' ')[0]),
                Stopwatch.GetElapsedTime(begun), said);
        }

        await process.WaitForExitAsync();
        throw new InvalidOperationException($"the program ended with {process.ExitCode}: {said}");
    }

    /// <summary>Ends it without warning: no finally block, no flush.</summary>
    public void Kill()
    {
        process.Kill();
        process.WaitForExit();
    }

    /// <summary>Asks it to end, as a supervisor does.</summary>
    /// <returns>Its exit code.</returns>
    public async Task<int> EndAsync(string signal = "TERM", int times = 1)
    {
        for (int i = 0; i < times; i++) await SignalAsync(signal);
        await process.WaitForExitAsync();
        return process.ExitCode;
    }

    /// <summary>Does something while the program stands still, between any two of its instructions.</summary>
    public async Task WhileHaltedAsync(Func<Task> work)
    {
        await SignalAsync("STOP");
        while (!Directory.EnumerateDirectories($"/proc/{process.Id}/task").All(IsHalted)) await Task.Delay(1);
        try
        {
            await work();
        }
        finally
        {
            await SignalAsync("CONT");
        }
    }

    // The state stands behind the name, which is in parentheses.
    private static bool IsHalted(string thread) =>
        File.ReadAllText($"{thread}/stat").Split(')')[^1].TrimStart()[0] == 'T';

    private async Task SignalAsync(string signal)
    {
        using var kill = Process.Start("kill", ["-" + signal, process.Id.ToString(CultureInfo.InvariantCulture)])!;
        await kill.WaitForExitAsync();
    }

    public ValueTask DisposeAsync()
    {
        if (!process.HasExited) Kill();
        process.Dispose();
        return ValueTask.CompletedTask;
    }
}
