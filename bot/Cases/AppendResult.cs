using System.Collections.Immutable;

namespace DxAssistant.Cases;

/// <summary>What became of a turn that was to be appended. There are exactly three ends.</summary>
public abstract record AppendResult
{
    private AppendResult() { }

    /// <summary>The events are on disk.</summary>
    public sealed record Appended(ImmutableArray<StoredEvent> Events) : AppendResult;

    /// <summary>Another turn came first; nothing was appended.</summary>
    /// <param name="LastSequence">The last sequence number of the case now; 0 when there is no such case.</param>
    public sealed record Conflict(long LastSequence) : AppendResult;

    /// <summary>This turn is already there; nothing was appended.</summary>
    /// <param name="Events">The events it was stored with.</param>
    public sealed record DuplicateTurn(ImmutableArray<StoredEvent> Events) : AppendResult;
}
