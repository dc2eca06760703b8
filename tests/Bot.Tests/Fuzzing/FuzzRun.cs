using System.Diagnostics;
using System.Text.Json;
using Xunit.Sdk;

namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>
/// Feeds changed inputs to a part of the program. What behaves as nothing before it did is kept and changed further, so
/// the inputs find their way in.
/// </summary>
internal sealed class FuzzRun(IFuzzPart part, FuzzSize size)
{
    private const int MostInPool = 20_000;

    // No input of these sizes takes a thousandth of it; on a machine that does much else too.
    private static readonly TimeSpan Hangs = TimeSpan.FromMinutes(2);

    private readonly List<string> pool = [];
    private readonly HashSet<string> seen = new(StringComparer.Ordinal);
    private readonly List<string> found = [];
    private long taken;
    private int longest;
    private long slowest;

    /// <exception cref="XunitException">An input did what it should not have; the message holds it.</exception>
    public async Task<FuzzFigures> RunAsync()
    {
        var clock = Stopwatch.StartNew();
        foreach (string input in (await part.BeginAsync()).Concat(Kept())) await TakeAsync(input);
        found.Clear();
        var random = new Random(size.Seed);
        while ((size.Inputs is not { } most || taken < most) && (size.Time is not { } time || clock.Elapsed < time))
            await TakeAsync(part.Change(random, pool));
        if (size.Keeps) Keep();
        return new FuzzFigures(part.Name, size.Seed, taken, seen.Count, longest,
            Stopwatch.GetElapsedTime(0, slowest).TotalMilliseconds, clock.Elapsed);
    }

    private async Task TakeAsync(string input)
    {
        taken++;
        long began = Stopwatch.GetTimestamp();
        string behaved;
        try
        {
            behaved = await Task.Run(() => part.TakeAsync(input)).WaitAsync(Hangs);
        }
        catch (Exception error)
        {
            throw new XunitException(
                $"{part.Name}, seed {size.Seed}, input {taken}: {JsonSerializer.Serialize(input)}\n{error}");
        }

        (slowest, longest) = (Math.Max(slowest, Stopwatch.GetTimestamp() - began), Math.Max(longest, input.Length));
        if (seen.Add(behaved)) found.Add(input);
        else if (taken > 1 && pool.Count > 0) return;
        if (pool.Count < MostInPool) pool.Add(input);
    }

    private string File => Repository.PathOf("tests", "Bot.Tests", "Fuzzing", "Kept", part.Name + ".jsonl");

    private IEnumerable<string> Kept() => System.IO.File.Exists(File)
        ? System.IO.File.ReadLines(File).Select(line => JsonSerializer.Deserialize<string>(line)!) : [];

    // Short ones say more, and the file stays small.
    private void Keep()
    {
        string[] kept =
            [.. Kept().Concat(found.Where(input => input.Length <= 400).OrderBy(input => input.Length).Take(60))
                .Distinct().Select(input => JsonSerializer.Serialize(input)).Take(300)];
        Directory.CreateDirectory(Path.GetDirectoryName(File)!);
        System.IO.File.WriteAllLines(File, kept);
    }
}
