namespace DxAssistant.Conversation.Events;

/// <summary>A symptom was reported.</summary>
/// <param name="Confidence">How sure it is that this symptom was meant; over 0, at most 1.</param>
/// <param name="Words">The words it came in.</param>
/// <param name="ComesAndGoes">Whether it was said to show only now and then.</param>
public sealed record SymptomReported(string Symptom, double Confidence, string Words, bool ComesAndGoes = false)
    : CaseEvent;
