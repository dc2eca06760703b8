namespace DxAssistant.Conversation.Events;

/// <summary>One step towards an access state was confirmed.</summary>
/// <param name="Step">Counts from 0.</param>
/// <param name="Words">The reading that proved it, where the step asks for one.</param>
public sealed record StepConfirmed(string Access, int Step, string? Words) : CaseEvent;
