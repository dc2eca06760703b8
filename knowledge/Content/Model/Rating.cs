namespace DxAssistant.Knowledge.Content.Model;

/// <summary>One figure or part of a series.</summary>
/// <param name="Value">As the page says it: a quantity with its unit, a name, or the title of a curve.</param>
/// <param name="Curve">The id of the curve page the value links to; null when it is no curve.</param>
public sealed record Rating(string Name, Passage Value, string? Curve, Source Source);
