namespace DxAssistant.Server.Simulating;

/// <summary>What is reported of a unit and what is really wrong with it.</summary>
internal sealed record Trouble(string Symptom, string Fault);
