using System.Collections.Immutable;
using DxAssistant.Conversation.State;

namespace DxAssistant.Conversation.Events;

/// <summary>
/// Earlier work on the unit was looked up by its serial number; takes the place of what was found before.
/// </summary>
public sealed record EarlierWorkFound(ImmutableArray<EarlierWork> Work) : CaseEvent;
