namespace DxAssistant.Cases.Claims;

/// <summary>A fault that is left possible where none was proven.</summary>
/// <param name="Belief">How likely it is by the evidence, 0 to 1.</param>
public sealed record ClaimSuspect(string Fault, string Title, double Belief);
