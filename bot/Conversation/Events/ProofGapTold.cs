using System.Collections.Immutable;

namespace DxAssistant.Conversation.Events;

/// <summary>
/// Checks that were left out were named once more, before a part is changed that they prove or before the walk ends;
/// that is done once.
/// </summary>
public sealed record ProofGapTold(ImmutableArray<string> Checks) : CaseEvent;
