namespace DxAssistant.Graph;

/// <summary>
/// What was worked out, the last things kept in mind: cases begin alike, and much of them is the same.
/// </summary>
/// <remarks>
/// For what depends on its key and on nothing else: a thing in mind is the thing that would be worked out again, to the
/// last bit. Safe to use from many threads.
/// </remarks>
/// <param name="most">How many are kept in mind; 1 or more.</param>
public sealed class Remembered<TKey, T>(int most)
    where TKey : notnull
    where T : class
{
    private readonly Lock gate = new();
    private readonly Dictionary<TKey, LinkedListNode<(TKey Key, T? Thing)>> kept = [];
    private readonly LinkedList<(TKey Key, T? Thing)> lastUsed = [];

    /// <summary>The thing in mind, or the one worked out now; null when there is none.</summary>
    public T? Of(TKey key, Func<T?> workOut)
    {
        if (TryFind(key, out var known)) return known;
        var made = workOut();
        Keep(key, made);
        return made;
    }

    private bool TryFind(TKey key, out T? thing)
    {
        thing = null;
        lock (gate)
        {
            if (!kept.TryGetValue(key, out var node)) return false;
            lastUsed.Remove(node);
            lastUsed.AddFirst(node);
            thing = node.Value.Thing;
            return true;
        }
    }

    private void Keep(TKey key, T? thing)
    {
        lock (gate)
        {
            if (!kept.TryAdd(key, new((key, thing)))) return;
            lastUsed.AddFirst(kept[key]);
            if (kept.Count <= most) return;
            kept.Remove(lastUsed.Last!.Value.Key);
            lastUsed.RemoveLast();
        }
    }
}
