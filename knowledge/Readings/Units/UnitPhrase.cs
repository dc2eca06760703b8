namespace DxAssistant.Knowledge.Readings.Units;

/// <summary>A unit found behind a number.</summary>
/// <param name="End">The token after its last.</param>
/// <param name="Letters">As typed, for the spellings in which case matters.</param>
/// <param name="Glued">It stands hard against the number.</param>
/// <param name="Following">The word behind it; empty if none or a label follows.</param>
internal sealed record UnitPhrase(UnitEntry Entry, int End, string Letters, bool Glued, string Following);
