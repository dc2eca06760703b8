using System.Collections.Concurrent;

namespace DxAssistant.Server.HandOver;

/// <summary>Rings when something was appended to a case by this program.</summary>
internal sealed class CaseBell
{
    private readonly ConcurrentDictionary<string, TaskCompletionSource> waiting = new(StringComparer.Ordinal);

    /// <summary>Done at the next ring. Whoever gives up waiting rings, so that nothing is left behind: others look in vain once.</summary>
    public Task Next(string caseId) => waiting.GetOrAdd(
        caseId, _ => new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously)).Task;

    public void Ring(string caseId)
    {
        if (waiting.TryRemove(caseId, out var listeners)) listeners.TrySetResult();
    }
}
