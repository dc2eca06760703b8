namespace DxAssistant.Conversation.Events;

/// <summary>Which product line the unit is of.</summary>
public sealed record SeriesChosen(string Series) : CaseEvent;
