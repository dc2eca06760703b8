namespace DxAssistant.Conversation.Events;

/// <summary>The person began anew.</summary>
/// <param name="AsksWho">
/// Whether it is asked anew who is at the unit: another caller may follow. In older logs nobody was asked.
/// </param>
public sealed record StartedOver(bool AsksWho = false) : CaseEvent;
