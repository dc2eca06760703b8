namespace DxAssistant.Conversation.Events;

/// <summary>A symptom that has no cause in common with the others is left until their fault is cured.</summary>
public sealed record SymptomPutOff(string Symptom) : CaseEvent;
