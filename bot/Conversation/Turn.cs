using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;

namespace DxAssistant.Conversation;

/// <summary>What one message led to.</summary>
/// <param name="Events">To be appended to the case's log, the message first, the reply last.</param>
/// <param name="Reply">The same reply, for the channel.</param>
public sealed record Turn(ImmutableArray<CaseEvent> Events, Reply Reply)
{
    /// <summary>Where the case stands after it: the fold of its events; null for a core that does not say.</summary>
    public CaseState? After { get; init; }

    /// <summary>The same turn, led to by another message that says the same.</summary>
    internal Turn SaidIn(Message message)
    {
        int place = 0;
        while (Events[place] is not Said) place++;
        return this with { Events = Events.SetItem(place, new Said(message.TurnId, message.By, message.Body)) };
    }
}
