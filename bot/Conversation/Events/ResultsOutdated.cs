using System.Collections.Immutable;

namespace DxAssistant.Conversation.Events;

/// <summary>
/// A repair that did not cure changed what these checks measured: their results speak of the unit no longer.
/// </summary>
public sealed record ResultsOutdated(ImmutableArray<string> Checks) : CaseEvent;
