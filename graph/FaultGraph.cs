using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using QuikGraph;

namespace DxAssistant.Graph;

/// <summary>
/// Faults, symptoms, checks, repairs and access states, and how they hang together. Built once, never changed.
/// </summary>
/// <remarks>
/// Everything that comes out is ordered by id (ordinal); access states keep the order they were given in.
/// </remarks>
public sealed class FaultGraph
{
    private readonly BidirectionalGraph<Node, Link> graph;
    private readonly ImmutableSortedDictionary<FaultId, Fault> faults;
    private readonly ImmutableSortedDictionary<SymptomId, Symptom> symptoms;
    private readonly ImmutableSortedDictionary<CheckId, Check> checks;
    private readonly ImmutableSortedDictionary<RepairId, Repair> repairs;

    internal FaultGraph(GraphParts parts, BidirectionalGraph<Node, Link> graph, ImmutableArray<Finding> findings)
    {
        this.graph = graph;
        (faults, symptoms, checks, repairs) = (parts.Faults, parts.Symptoms, parts.Checks, parts.Repairs);
        Faults = [.. faults.Values];
        Symptoms = [.. symptoms.Values];
        Checks = [.. checks.Values];
        Repairs = [.. repairs.Values];
        Access = parts.Access;
        Likelihoods = new LikelihoodTable(Checks, Faults);
        Findings = findings;
    }

    /// <summary>
    /// Builds a graph from its parts, whatever their order. What is wrong with them is in <see cref="Findings"/>.
    /// </summary>
    public static FaultGraph Build(
        IEnumerable<Fault> faults, IEnumerable<Symptom> symptoms, IEnumerable<Check> checks,
        IEnumerable<Repair> repairs, AccessStates access) =>
        GraphBuilder.Build(faults, symptoms, checks, repairs, access);

    /// <summary>The same graph with parts changed for nothing at another price.</summary>
    /// <param name="factor">Times the price of now; 0 or more.</param>
    public FaultGraph WithWrongParts(double factor) => Build(
        Faults, Symptoms, Checks,
        Repairs.Select(repair => repair with { WrongMinutes = repair.WrongMinutes * factor }), Access);

    public ImmutableArray<Fault> Faults { get; }
    public ImmutableArray<Symptom> Symptoms { get; }
    public ImmutableArray<Check> Checks { get; }
    public ImmutableArray<Repair> Repairs { get; }
    public AccessStates Access { get; }

    /// <summary>All rows of all checks, for planning.</summary>
    internal LikelihoodTable Likelihoods { get; }

    /// <summary>What was wrong with the parts, parts first, then relations, each by id.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>The vertices, in the order symptoms, faults, checks, repairs, access states, each by id.</summary>
    public IEnumerable<Node> Nodes => graph.Vertices;

    /// <summary>The edges, grouped by source in the order of <see cref="Nodes"/>.</summary>
    public IEnumerable<Link> Links => graph.Edges;

    public IEnumerable<Link> LinksFrom(Node node) =>
        graph.TryGetOutEdges(node, out IEnumerable<Link> links) ? links : [];
    public IEnumerable<Link> LinksTo(Node node) =>
        graph.TryGetInEdges(node, out IEnumerable<Link> links) ? links : [];

    public Fault? Find(FaultId id) => faults.GetValueOrDefault(id);
    public Symptom? Find(SymptomId id) => symptoms.GetValueOrDefault(id);
    public Check? Find(CheckId id) => checks.GetValueOrDefault(id);
    public Repair? Find(RepairId id) => repairs.GetValueOrDefault(id);

    /// <summary>The symptoms a fault can cause.</summary>
    public IEnumerable<Symptom> SymptomsOf(FaultId fault) =>
        LinksFrom(new Node.OfFault(fault)).OfType<Link.Causes>().Select(link => symptoms[link.Symptom]);

    /// <summary>The faults that can cause a symptom.</summary>
    public IEnumerable<Fault> CausesOf(SymptomId symptom) =>
        LinksTo(new Node.OfSymptom(symptom)).OfType<Link.Causes>().Select(link => faults[link.Fault]);

    /// <summary>The repairs that cure a fault.</summary>
    public IEnumerable<Repair> RepairsOf(FaultId fault) =>
        LinksTo(new Node.OfFault(fault)).OfType<Link.Cures>().Select(link => repairs[link.Repair]);

    /// <summary>The checks that give a fault a row of its own that differs from another fault's.</summary>
    public IEnumerable<Check> ChecksOf(FaultId fault) =>
        LinksTo(new Node.OfFault(fault)).OfType<Link.Separates>().Select(link => checks[link.Check]);

    /// <summary>The faults to which a check gives a row of their own that differs from another fault's.</summary>
    public IEnumerable<Fault> FaultsSeenBy(CheckId check) =>
        LinksFrom(new Node.OfCheck(check)).OfType<Link.Separates>().Select(link => faults[link.Fault]);

    /// <summary>The checks that can tell at least two of these faults apart.</summary>
    public IEnumerable<Check> ChecksSeparating(IReadOnlyCollection<FaultId> among)
    {
        // A check without a row of its own for any of them shows the same under all.
        HashSet<CheckId> listing = [.. among.SelectMany(ListingOf)];
        return Checks.Where(check => listing.Contains(check.Id) && check.Separates(among));
    }

    /// <summary>The checks and repairs that may be done in an access state.</summary>
    public IEnumerable<Node> DoneIn(AccessId access) =>
        LinksTo(new Node.OfAccess(access)).Where(link => link is not Link.LeadsTo).Select(link => link.Source);

    /// <summary>What the evidence says about each fault.</summary>
    /// <param name="applicable">The faults the unit can have; null means all.</param>
    /// <exception cref="ArgumentException">
    /// Evidence names a part that is not in the graph, or is out of its range.
    /// </exception>
    public Belief Believe(IEnumerable<Evidence> evidence, IReadOnlySet<FaultId>? applicable = null) =>
        BeliefReckoning.Reckon(this, [.. evidence], applicable);

    private IEnumerable<CheckId> ListingOf(FaultId fault) =>
        LinksTo(new Node.OfFault(fault)).OfType<Link.Separates>().Select(link => link.Check);
}
