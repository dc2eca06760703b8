using System.Collections.Concurrent;
using DxAssistant.Cases;

namespace DxAssistant.Server.HandOver;

/// <summary>Rings when something was appended to a case by this program, or by another that tells of it.</summary>
/// <param name="news">What is heard of other programs; null when they have to be found out by asking the store.</param>
internal sealed class CaseBell(ICaseNews? news = null)
{
    // Word of others may be lost with the program that should have told it.
    private static readonly TimeSpan Seldom = TimeSpan.FromSeconds(10);

    private readonly ConcurrentDictionary<string, TaskCompletionSource> waiting = new(StringComparer.Ordinal);
    private TaskCompletionSource any = New();

    /// <summary>
    /// Done at the next ring. Whoever gives up waiting rings, so that nothing is left behind: others look in vain once.
    /// </summary>
    public Task Next(string caseId) => waiting.GetOrAdd(caseId, _ => New()).Task;

    /// <summary>Done at the next ring for any case.</summary>
    public Task NextOfAny() => Volatile.Read(ref any).Task;

    public void Ring(string caseId)
    {
        if (waiting.TryRemove(caseId, out var listeners)) listeners.TrySetResult();
        RingForAny();
    }

    /// <summary>
    /// Rings for a case of which another program told; for all when word of them may have been missed.
    /// </summary>
    public void RingFor(string? caseId)
    {
        foreach (string each in caseId is null ? waiting.Keys : [caseId]) Ring(each);
        if (caseId is null) RingForAny();
    }

    /// <summary>Waits for a ring, or until the store is to be asked.</summary>
    /// <param name="alone">How long at most where others are not heard.</param>
    public Task UntilAsync(Task ring, TimeSpan alone, CancellationToken cancel) =>
        Task.WhenAny(ring, Task.Delay(news is { Hears: true } ? Seldom : alone, cancel));

    private void RingForAny() => Interlocked.Exchange(ref any, New()).TrySetResult();

    private static TaskCompletionSource New() => new(TaskCreationOptions.RunContinuationsAsynchronously);
}
