using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;

namespace DxAssistant.Cases;

/// <summary>
/// A turn that was just stored, with what is needed to show it, so that the log need not be read for that.
/// </summary>
/// <param name="Asked">The question that was open when the message came in; null when none was.</param>
/// <param name="After">Where the case stands after it.</param>
public sealed record TurnDone(OpenQuestion? Asked, ImmutableArray<StoredEvent> Events, CaseState After);
