namespace DxAssistant.Knowledge.Search;

/// <summary>
/// A matcher that is made when it is first asked, or before that step by step, for a place where learning takes longer
/// than a person waits. May be asked by many at once: all wait for the one that is being made.
/// </summary>
/// <param name="steps">Gives null until the last step, which gives the matcher.</param>
public sealed class LateMatcher(IEnumerable<IMatcher?> steps) : IMatcher
{
    private readonly Lock gate = new();
    private IEnumerator<IMatcher?>? left;
    private IMatcher? made;

    /// <summary>Does one step of the making.</summary>
    /// <returns>Whether there is more to do.</returns>
    public bool GoOn()
    {
        lock (gate)
        {
            if (made is not null) return false;
            left ??= steps.GetEnumerator();
            if (!left.MoveNext()) throw new InvalidOperationException("the steps made nothing");
            made = left.Current;
            if (made is not null) left.Dispose();
            return made is null;
        }
    }

    /// <inheritdoc/>
    public MatchResult Match(string text, string? seriesId = null)
    {
        while (GoOn()) continue;
        return made!.Match(text, seriesId);
    }
}
