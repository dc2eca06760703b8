using System.Collections.Immutable;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Cases;

/// <summary>The pure core behind a desk: what was logged and what is said now, to a turn.</summary>
public interface IResponder
{
    /// <summary>Works out the turn that a message leads to. The same log and message give the same turn.</summary>
    Turn Respond(ImmutableArray<CaseEvent> log, Message message);
}
