namespace DxAssistant.Conversation.Events;

/// <summary>The mode in which the unit runs.</summary>
/// <param name="Mode">The end of the id of the phrase that names it, such as <c>cooling</c>.</param>
public sealed record ModeStated(string Mode) : CaseEvent;
