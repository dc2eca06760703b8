namespace DxAssistant.Conversation.Events;

/// <summary>All steps towards an access state are confirmed: the unit stands so now.</summary>
public sealed record AccessReached(string Access) : CaseEvent;
