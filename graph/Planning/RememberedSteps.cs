namespace DxAssistant.Graph.Planning;

/// <summary>Chosen steps, the last ones kept in mind: units with the same complaint begin with the same steps.</summary>
/// <remarks>A step in mind is the step that would be chosen again, to the last bit. Safe to use from many threads.</remarks>
/// <param name="most">How many are kept in mind; 1 or more. A few kilobytes each.</param>
public sealed class RememberedSteps<T>(int most = RememberedSteps<T>.Usual)
    where T : class
{
    /// <summary>Room for the first steps of all complaints on all series.</summary>
    public const int Usual = 4_096;

    private readonly Lock gate = new();
    private readonly Dictionary<StepKey, LinkedListNode<(StepKey Key, T? Step)>> kept = [];
    private readonly LinkedList<(StepKey Key, T? Step)> lastUsed = [];

    /// <summary>The step in mind, or the one chosen now; null when none can be chosen.</summary>
    public T? Of(StepKey key, Func<T?> choose)
    {
        if (TryFind(key, out var known)) return known;
        var chosen = choose();
        Keep(key, chosen);
        return chosen;
    }

    private bool TryFind(StepKey key, out T? step)
    {
        step = null;
        lock (gate)
        {
            if (!kept.TryGetValue(key, out var node)) return false;
            lastUsed.Remove(node);
            lastUsed.AddFirst(node);
            step = node.Value.Step;
            return true;
        }
    }

    private void Keep(StepKey key, T? step)
    {
        lock (gate)
        {
            if (!kept.TryAdd(key, new((key, step)))) return;
            lastUsed.AddFirst(kept[key]);
            if (kept.Count <= most) return;
            kept.Remove(lastUsed.Last!.Value.Key);
            lastUsed.RemoveLast();
        }
    }
}
