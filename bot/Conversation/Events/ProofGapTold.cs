using System.Collections.Immutable;

namespace DxAssistant.Conversation.Events;

/// <summary>Checks that were left out although they prove a fault were named before its part is changed; that is done once.</summary>
public sealed record ProofGapTold(ImmutableArray<string> Checks) : CaseEvent;
