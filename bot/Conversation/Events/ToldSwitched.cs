namespace DxAssistant.Conversation.Events;

/// <summary>One thing of a whole message was taken back, or taken in again.</summary>
/// <param name="Place">Its place among the items, from 0.</param>
public sealed record ToldSwitched(int Place) : CaseEvent;
