using DxAssistant.Conversation.Messages;

namespace DxAssistant.Conversation.Events;

/// <summary>A message came in. Everything up to the next one follows from it.</summary>
public sealed record Said(string TurnId, string By, MessageBody Body) : CaseEvent;
