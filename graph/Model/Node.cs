namespace DxAssistant.Graph.Model;

/// <summary>A vertex of the fault graph.</summary>
public abstract record Node
{
    private Node() { }

    public sealed record OfSymptom(SymptomId Id) : Node;
    public sealed record OfFault(FaultId Id) : Node;
    public sealed record OfCheck(CheckId Id) : Node;
    public sealed record OfRepair(RepairId Id) : Node;
    public sealed record OfAccess(AccessId Id) : Node;
}
