using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using QuikGraph;

namespace DxAssistant.Graph;

/// <summary>Turns parts into nodes and links, in ordinal order, and notes what hangs loose.</summary>
internal static class GraphBuilder
{
    public static FaultGraph Build(
        IEnumerable<Fault> faults, IEnumerable<Symptom> symptoms, IEnumerable<Check> checks,
        IEnumerable<Repair> repairs, AccessStates access)
    {
        PartsInspection inspection = new(access);
        GraphParts parts = inspection.Inspect(faults, symptoms, checks, repairs);
        return new FaultGraph(parts, inspection.Findings);
    }

    /// <summary>A graph with some parts in place of those that have their ids, or added.</summary>
    /// <param name="found">What was wrong with the parts before.</param>
    public static FaultGraph Edit(FaultGraph before, GraphParts parts, ImmutableArray<Finding> found, GraphEdit edit)
    {
        PartsInspection inspection = new(parts.Access);
        GraphParts edited = inspection.Inspect(edit, parts);
        if (found.IsEmpty && inspection.Findings.IsEmpty) return new FaultGraph(edited, [], before);
        // A part that cannot be used takes others with it.
        return Build(
            Over(before.Faults, edit.Faults, part => part.Id), Over(before.Symptoms, edit.Symptoms, part => part.Id),
            Over(before.Checks, edit.Checks, part => part.Id), Over(before.Repairs, edit.Repairs, part => part.Id),
            parts.Access);
    }

    private static IEnumerable<T> Over<T, TId>(ImmutableArray<T> before, ImmutableArray<T> edited, Func<T, TId> id) =>
        before.ExceptBy(edited.Select(id), id).Concat(edited);

    /// <summary>The parts as nodes and links.</summary>
    public static BidirectionalGraph<Node, Link> Join(GraphParts parts)
    {
        BidirectionalGraph<Node, Link> graph = new(allowParallelEdges: false);
        graph.AddVertexRange(NodesOf(parts));
        graph.AddEdgeRange(LinksOf(parts));
        return graph;
    }

    private static IEnumerable<Node> NodesOf(GraphParts parts) =>
    [
        .. parts.Symptoms.Keys.Select(id => new Node.OfSymptom(id)),
        .. parts.Faults.Keys.Select(id => new Node.OfFault(id)),
        .. parts.Checks.Keys.Select(id => new Node.OfCheck(id)),
        .. parts.Repairs.Keys.Select(id => new Node.OfRepair(id)),
        .. parts.Access.All.Select(state => new Node.OfAccess(state.Id)),
    ];

    private static IEnumerable<Link> LinksOf(GraphParts parts)
    {
        foreach (Symptom symptom in parts.Symptoms.Values)
            foreach ((FaultId fault, double probability) in symptom.Causes)
                yield return new Link.Causes(fault, symptom.Id, probability);
        foreach (Check check in parts.Checks.Values)
        {
            foreach (FaultId fault in check.Likelihoods.Keys)
                if (FaultIndex.SetsApart(check, fault, parts.Faults.Count))
                    yield return new Link.Separates(check.Id, fault);
            foreach (AccessId access in check.Access) yield return new Link.CheckDoneIn(check.Id, access);
        }

        foreach (Repair repair in parts.Repairs.Values)
        {
            foreach (FaultId fault in repair.Fixes) yield return new Link.Cures(repair.Id, fault);
            foreach (AccessId access in repair.Access) yield return new Link.RepairDoneIn(repair.Id, access);
        }

        foreach (Link move in MovesOf(parts.Access)) yield return move;
    }

    private static IEnumerable<Link> MovesOf(AccessStates access) =>
        from start in access.All
        from end in access.All
        let minutes = access.Minutes(start.Id, end.Id)
        where start != end && double.IsFinite(minutes)
        select new Link.LeadsTo(start.Id, end.Id, minutes);
}
