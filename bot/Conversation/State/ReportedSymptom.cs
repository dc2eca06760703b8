namespace DxAssistant.Conversation.State;

/// <summary>A symptom as it was reported.</summary>
/// <param name="Confidence">Over 0, at most 1.</param>
/// <param name="ComesAndGoes">Whether it was said to show only now and then.</param>
public sealed record ReportedSymptom(string Symptom, double Confidence, string Words, bool ComesAndGoes = false);
