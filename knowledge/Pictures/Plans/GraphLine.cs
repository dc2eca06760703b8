namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>A line between two boxes of a symptom's graph.</summary>
/// <param name="IsFull">Drawn through: a proof or a cure.</param>
internal sealed record GraphLine(string From, string To, bool IsFull);
