using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation;

/// <summary>What one message led to.</summary>
/// <param name="Events">To be appended to the case's log, the message first, the reply last.</param>
/// <param name="Reply">The same reply, for the channel.</param>
public sealed record Turn(ImmutableArray<CaseEvent> Events, Reply Reply);
