using System.Collections.Immutable;

namespace DxAssistant.Conversation.Events;

/// <summary>
/// Results that contradict each other were taken again or are believed all the same; they are not asked about a second
/// time.
/// </summary>
public sealed record ContradictionAccepted(ImmutableArray<string> Checks) : CaseEvent;
