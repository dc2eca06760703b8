using System.Collections.Immutable;
using System.Diagnostics;
using DxAssistant.Bot.Tests.Load;

namespace DxAssistant.Benchmarks.Load;

/// <summary>Many people at a time, each sending the turns of one recorded conversation after another.</summary>
/// <param name="people">How many cases are open at a time.</param>
/// <param name="pace">
/// How long a person waits after an answer, 0 for not at all; drawn between nothing and twice that.
/// </param>
internal sealed class LoadRun(ImmutableArray<ImmutableArray<RecordedTurn>> walks, int people, TimeSpan pace, int seed)
{
    // With a pace, people come to different places of their conversations before counting begins.
    private const int MostSkipped = 8;

    private readonly Lock gate = new();
    private readonly List<double> latencies = [];
    private int begun;
    private int skipping;
    private long counting;

    /// <summary>Has whole conversations that nobody counts.</summary>
    public static async Task HaveAsync(ILoadTarget target, ImmutableArray<ImmutableArray<RecordedTurn>> walks,
        int people)
    {
        var run = new LoadRun(walks, people, TimeSpan.Zero, 0) { counting = long.MaxValue };
        await Task.WhenAll(Enumerable.Range(0, people).Select(_ => run.HaveAllAsync(target)));
    }

    /// <summary>Lets people talk, and counts once they are at it.</summary>
    public async Task<Stretch> RunAsync(ILoadTarget target, TimeSpan counted)
    {
        latencies.Clear();
        (begun, skipping, counting) = (0, people, long.MaxValue);
        using var end = new CancellationTokenSource();
        Task[] all =
            [.. Enumerable.Range(0, people).Select(person => TalkAsync(target, new Random(seed + person), end.Token))];
        while (Volatile.Read(ref skipping) > 0 && !Array.Exists(all, one => one.IsFaulted)) await Task.Delay(20);
        double processor = target.Server.ProcessorSeconds;
        long start = Stopwatch.GetTimestamp();
        Interlocked.Exchange(ref counting, start);
        await Task.Delay(counted);
        var took = Stopwatch.GetElapsedTime(start);
        processor = target.Server.ProcessorSeconds - processor;
        List<double> within;
        lock (gate) within = [.. latencies];
        await end.CancelAsync();
        await Task.WhenAll(all);
        return Stretch.Of(within, took, processor) with { Again = Math.Max(0, 1 - ((double)walks.Length / begun)) };
    }

    private async Task HaveAllAsync(ILoadTarget target)
    {
        while (Interlocked.Increment(ref begun) is var number && number <= walks.Length)
            await HaveAsync(target, walks[number - 1], () => Task.CompletedTask, CancellationToken.None);
    }

    private async Task TalkAsync(ILoadTarget target, Random random, CancellationToken end)
    {
        int skip = pace > TimeSpan.Zero ? random.Next(MostSkipped) : 0;
        while (!end.IsCancellationRequested)
        {
            var walk = walks[(Interlocked.Increment(ref begun) - 1) % walks.Length];
            await HaveAsync(target, walk, async () =>
            {
                if (skip-- == 0) Interlocked.Decrement(ref skipping);
                if (pace > TimeSpan.Zero && skip < 0) await WaitAsync(random, end);
            }, end);
        }
    }

    private async Task HaveAsync(ILoadTarget target, ImmutableArray<RecordedTurn> walk, Func<Task> thinkAsync,
        CancellationToken end)
    {
        string caseId = await target.OpenAsync();
        long sequence = 3;
        foreach (var turn in walk)
        {
            await thinkAsync();
            if (end.IsCancellationRequested) return;
            long sent = Stopwatch.GetTimestamp();
            await target.SendAsync(caseId, sequence, turn);
            Count(sent);
            sequence += turn.Events.Length;
        }
    }

    private async Task WaitAsync(Random random, CancellationToken end)
    {
        try
        {
            await Task.Delay(2 * pace * random.NextDouble(), end);
        }
        catch (OperationCanceledException)
        {
            // The run is over.
        }
    }

    private void Count(long sent)
    {
        if (sent < Interlocked.Read(ref counting)) return;
        double took = Stopwatch.GetElapsedTime(sent).TotalMilliseconds;
        lock (gate) latencies.Add(took);
    }
}
