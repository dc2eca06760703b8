namespace DxAssistant.Conversation.Events;

/// <summary>A symptom told with doubt was asked about once more.</summary>
/// <param name="IsThere">null when it cannot be told.</param>
public sealed record DoubtSettled(string Symptom, bool? IsThere) : CaseEvent;
