using QuikGraph;

namespace DxAssistant.Graph.Model;

/// <summary>A directed edge of the fault graph.</summary>
public abstract record Link : IEdge<Node>
{
    private Link(Node source, Node target) => (Source, Target) = (source, target);

    public Node Source { get; }
    public Node Target { get; }

    /// <summary>The fault can cause the symptom, with P(symptom | fault).</summary>
    public sealed record Causes(FaultId Fault, SymptomId Symptom, double Probability)
        : Link(new Node.OfFault(Fault), new Node.OfSymptom(Symptom));

    /// <summary>The check gives the fault a row of its own that differs from another fault's.</summary>
    public sealed record Separates(CheckId Check, FaultId Fault)
        : Link(new Node.OfCheck(Check), new Node.OfFault(Fault));

    /// <summary>The repair cures the fault.</summary>
    public sealed record Cures(RepairId Repair, FaultId Fault)
        : Link(new Node.OfRepair(Repair), new Node.OfFault(Fault));

    /// <summary>The check may be done in the access state.</summary>
    public sealed record CheckDoneIn(CheckId Check, AccessId Access)
        : Link(new Node.OfCheck(Check), new Node.OfAccess(Access));

    /// <summary>The repair may be done in the access state.</summary>
    public sealed record RepairDoneIn(RepairId Repair, AccessId Access)
        : Link(new Node.OfRepair(Repair), new Node.OfAccess(Access));

    /// <summary>The unit can be brought from one access state to another.</summary>
    /// <param name="Minutes">Of the shortest way; 0 or more.</param>
    public sealed record LeadsTo(AccessId From, AccessId To, double Minutes)
        : Link(new Node.OfAccess(From), new Node.OfAccess(To));
}
