namespace DxAssistant.Conversation.Events;

/// <summary>The case ended.</summary>
/// <param name="How">
/// <c>repaired</c>, <c>watch</c> (none of these, or intermittent), <c>book</c> (a person with another role is needed)
/// or <c>other-unit</c>.
/// </param>
public sealed record Closed(string How) : CaseEvent;
