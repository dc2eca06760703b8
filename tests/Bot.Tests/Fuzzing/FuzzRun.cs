using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>Feeds changed inputs to a part of the program until the count or the time is up. What behaves as nothing before it did is
/// kept and changed further, so the inputs find their way in.</summary>
/// <remarks>Without <c>DX_FUZZ</c> a fixed number of inputs from a fixed seed, the same in each run; <c>DX_FUZZ=600</c> goes on for so many
/// seconds from a new seed, which is printed (<c>DX_SEED</c> gives one), and adds to the kept inputs what it found.</remarks>
/// <param name="name">The file of kept inputs is called so.</param>
internal sealed class FuzzRun(ITestOutputHelper output, string name, int few)
{
    private const int UsualSeed = 20261126;
    private const int MostInPool = 20_000;

    // No input of these sizes takes a thousandth of it; on a machine that does much else too.
    private static readonly TimeSpan Hangs = TimeSpan.FromMinutes(2);

    private readonly List<string> pool = [];
    private readonly HashSet<string> seen = new(StringComparer.Ordinal);
    private readonly List<string> found = [];
    private long taken;
    private (string Input, long Ticks) slowest = ("", 0);

    /// <param name="first">Inputs to begin with; at least one.</param>
    /// <param name="change">Makes another input of one.</param>
    /// <param name="take">What is tried: gives a word or two for how it behaved, and throws when it should not have.</param>
    public async Task RunAsync(IEnumerable<string> first, Func<Random, IReadOnlyList<string>, string> change, Func<string, Task<string>> take)
    {
        int? seconds = Number("DX_FUZZ");
        int seed = Number("DX_SEED") ?? (seconds is null ? UsualSeed : Environment.TickCount & int.MaxValue);
        output.WriteLine($"{name}: seed {seed}");
        foreach (string input in first.Concat(Kept())) await TakeAsync(input, take, seed);
        found.Clear();
        var random = new Random(seed);
        var clock = Stopwatch.StartNew();
        while (seconds is { } until ? clock.Elapsed.TotalSeconds < until : taken < few) await TakeAsync(change(random, pool), take, seed);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{name}: {taken} inputs, {seen.Count} behaviours, slowest {Stopwatch.GetElapsedTime(0, slowest.Ticks).TotalMilliseconds:0} ms: {Shown(slowest.Input)}"));
        if (seconds is not null) Keep();
    }

    private async Task TakeAsync(string input, Func<string, Task<string>> take, int seed)
    {
        taken++;
        long began = Stopwatch.GetTimestamp();
        string behaved;
        try
        {
            behaved = await Task.Run(() => take(input)).WaitAsync(Hangs);
        }
        catch (Exception error)
        {
            throw new XunitException($"{name}, seed {seed}, input {taken}: {JsonSerializer.Serialize(input)}\n{error}");
        }

        long ticks = Stopwatch.GetTimestamp() - began;
        if (ticks > slowest.Ticks) slowest = (input, ticks);
        if (seen.Add(behaved)) found.Add(input);
        else if (taken > 1 && pool.Count > 0) return;
        if (pool.Count < MostInPool) pool.Add(input);
    }

    private string File => Repository.PathOf("tests", "Bot.Tests", "Fuzzing", "Kept", name + ".jsonl");

    private IEnumerable<string> Kept() => System.IO.File.Exists(File)
        ? System.IO.File.ReadLines(File).Select(line => JsonSerializer.Deserialize<string>(line)!) : [];

    // Short ones say more, and the file stays small.
    private void Keep()
    {
        string[] kept = [.. Kept().Concat(found.Where(input => input.Length <= 400).OrderBy(input => input.Length).Take(60))
            .Distinct().Select(input => JsonSerializer.Serialize(input)).Take(300)];
        Directory.CreateDirectory(Path.GetDirectoryName(File)!);
        System.IO.File.WriteAllLines(File, kept);
    }

    private static string Shown(string input) => JsonSerializer.Serialize(input.Length > 200 ? input[..200] + "…" : input);

    private static int? Number(string variable) => int.TryParse(
        Environment.GetEnvironmentVariable(variable), NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : null;
}
