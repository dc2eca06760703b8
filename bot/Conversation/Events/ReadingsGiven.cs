using System.Collections.Immutable;

namespace DxAssistant.Conversation.Events;

/// <summary>Readings of a check came in; perhaps not yet all of them.</summary>
public sealed record ReadingsGiven(string Check, ImmutableArray<GivenReading> Readings) : CaseEvent;
