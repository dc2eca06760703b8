namespace DxAssistant.Graph.Model;

/// <summary>A failed part or a site condition that explains symptoms (IEC 60050-192, from memory).</summary>
/// <param name="Weight">How common it is against the other faults; above 0, on any scale.</param>
public sealed record Fault(FaultId Id, double Weight);
