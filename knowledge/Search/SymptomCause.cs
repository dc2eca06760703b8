namespace DxAssistant.Knowledge.Search;

/// <summary>One fault that explains a symptom.</summary>
/// <param name="Probability">That the symptom is seen when the fault is present, 0 to 1.</param>
/// <param name="Weight">How frequent the fault is against others; greater than 0.</param>
public sealed record SymptomCause(string FaultId, double Probability, double Weight);
