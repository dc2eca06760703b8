using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>One step towards an access state.</summary>
/// <param name="Limit">The reading that proves it; null when a look or an act is enough.</param>
public sealed record AccessStep(Passage Do, SafeLimit? Limit)
{
    /// <summary>The states from which it need not be done again: what was proven there still holds.</summary>
    public ImmutableArray<AccessId> DoneIn { get; init; } = [];

    /// <summary>The danger at whose signs alone it is done; null for most.</summary>
    public DangerKind? OnlyAt { get; init; }
}
