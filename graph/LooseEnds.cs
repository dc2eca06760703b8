using DxAssistant.Graph.Model;
using QuikGraph;

namespace DxAssistant.Graph;

/// <summary>Nodes that lack the links they need to be of use.</summary>
internal static class LooseEnds
{
    public static IEnumerable<Finding> Of(GraphParts parts, BidirectionalGraph<Node, Link> graph)
    {
        foreach (Symptom symptom in parts.Symptoms.Values)
            if (symptom.Causes.IsEmpty) yield return new Finding.WithoutCause(symptom.Id);
        foreach (FaultId fault in parts.Faults.Keys.Where(id => id != FaultId.NoneOfThese))
            foreach (Finding finding in Of(fault, graph)) yield return finding;
        foreach (CheckId check in parts.Checks.Keys)
            if (!graph.OutEdges(new Node.OfCheck(check)).Any(link => link is Link.Separates))
                yield return new Finding.SeparatesNothing(check);
        foreach (Repair repair in parts.Repairs.Values)
            if (repair.Fixes.IsEmpty) yield return new Finding.CuresNothing(repair.Id);
        foreach (AccessState state in parts.Access.All)
            if (double.IsInfinity(parts.Access.Minutes(parts.Access.Start, state.Id)))
                yield return new Finding.Unreachable(state.Id);
    }

    private static IEnumerable<Finding> Of(FaultId fault, BidirectionalGraph<Node, Link> graph)
    {
        Node node = new Node.OfFault(fault);
        if (!graph.OutEdges(node).Any(link => link is Link.Causes)) yield return new Finding.WithoutSymptom(fault);
        if (!graph.InEdges(node).Any(link => link is Link.Separates)) yield return new Finding.SeenByNoCheck(fault);
        if (!graph.InEdges(node).Any(link => link is Link.Cures)) yield return new Finding.WithoutRepair(fault);
    }
}
