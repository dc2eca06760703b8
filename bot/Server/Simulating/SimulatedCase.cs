namespace DxAssistant.Server.Simulating;

/// <summary>One unit to play: what is reported, on what, by whom, and what is really wrong.</summary>
/// <param name="Seed">Draws everything about the unit that the pages leave open.</param>
internal sealed record SimulatedCase(string Symptom, string Series, string Role, string Fault, ulong Seed);
