using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Clarifying;

/// <summary>A symptom that may be meant.</summary>
/// <param name="Weight">How well it fits, against the others; more than 0.</param>
public sealed record Candidate(SymptomPage Symptom, double Weight);
