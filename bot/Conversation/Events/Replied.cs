using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.Events;

/// <summary>What the assistant answered.</summary>
public sealed record Replied(Reply Reply) : CaseEvent;
