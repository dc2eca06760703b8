namespace DxAssistant.Conversation.Events;

/// <summary>
/// The trouble itself was denied in the middle of the work; whether it is gone was asked and answered.
/// </summary>
public sealed record TroubleDenied(bool IsGone) : CaseEvent;
