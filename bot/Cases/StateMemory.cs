using System.Diagnostics.CodeAnalysis;
using DxAssistant.Conversation.State;

namespace DxAssistant.Cases;

/// <summary>
/// Where the cases stand that were talked at last, so that their logs need not be read and folded for each message.
/// </summary>
/// <remarks>
/// Nothing is lost with it: it is asked with the mark that the store gives now, and whatever happened to the case
/// since, here or elsewhere, makes another mark.
/// </remarks>
/// <param name="most">How many cases are kept in mind; 1 or more.</param>
internal sealed class StateMemory(int most)
{
    private readonly Lock gate = new();
    private readonly Dictionary<string, LinkedListNode<Kept>> kept = new(StringComparer.Ordinal);
    private readonly LinkedList<Kept> lastUsed = [];

    public bool TryFind(string caseId, CaseMark mark, [NotNullWhen(true)] out CaseState? state)
    {
        state = null;
        lock (gate)
        {
            if (!kept.TryGetValue(caseId, out var node) || node.Value.Mark != mark) return false;
            lastUsed.Remove(node);
            lastUsed.AddFirst(node);
            state = node.Value.State;
            return true;
        }
    }

    public void Keep(string caseId, CaseMark mark, CaseState state)
    {
        lock (gate)
        {
            if (kept.Remove(caseId, out var before)) lastUsed.Remove(before);
            kept[caseId] = lastUsed.AddFirst(new Kept(caseId, mark, state));
            if (kept.Count <= most) return;
            kept.Remove(lastUsed.Last!.Value.CaseId);
            lastUsed.RemoveLast();
        }
    }

    private sealed record Kept(string CaseId, CaseMark Mark, CaseState State);
}
