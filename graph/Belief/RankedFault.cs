using DxAssistant.Graph.Model;

namespace DxAssistant.Graph;

/// <summary>A fault and how likely it is to be the one present.</summary>
/// <param name="Probability">0 to 1.</param>
public sealed record RankedFault(FaultId Id, double Probability);
