namespace DxAssistant.Conversation.Events;

/// <summary>Who is at the unit.</summary>
public sealed record RoleStated(string Role) : CaseEvent;
