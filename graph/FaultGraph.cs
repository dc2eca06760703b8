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
    private readonly Lazy<FaultIndex> index;
    private readonly Lazy<BidirectionalGraph<Node, Link>> graph;
    private readonly Lazy<ImmutableArray<Finding>> findings;
    private readonly Lazy<double> everything;
    private readonly GraphParts parts;
    private readonly ImmutableArray<Finding> ofParts;
    private readonly ImmutableSortedDictionary<FaultId, Fault> faults;
    private readonly ImmutableSortedDictionary<SymptomId, Symptom> symptoms;
    private readonly ImmutableSortedDictionary<CheckId, Check> checks;
    private readonly ImmutableSortedDictionary<RepairId, Repair> repairs;

    // Nodes and links are joined when somebody first goes through all of them, so that an edited page is live before.
    internal FaultGraph(GraphParts parts, ImmutableArray<Finding> ofParts, FaultGraph? before = null)
    {
        (this.parts, this.ofParts) = (parts, ofParts);
        index = new(() => new FaultIndex(parts));
        graph = new(() => GraphBuilder.Join(parts));
        findings = new(() => ofParts.AddRange(LooseEnds.Of(parts, graph.Value)));
        everything = new(SumOfEverything);
        (faults, symptoms, checks, repairs) = (parts.Faults, parts.Symptoms, parts.Checks, parts.Repairs);
        Faults = before?.faults == faults ? before.Faults : [.. faults.Values];
        Symptoms = before?.symptoms == symptoms ? before.Symptoms : [.. symptoms.Values];
        Checks = before?.checks == checks ? before.Checks : [.. checks.Values];
        Repairs = before?.repairs == repairs ? before.Repairs : [.. repairs.Values];
        Access = parts.Access;
        Likelihoods = before?.Likelihoods.Again(Checks, Faults) ?? new LikelihoodTable(Checks, Faults);
    }

    /// <summary>
    /// Builds a graph from its parts, whatever their order. What is wrong with them is in <see cref="Findings"/>.
    /// </summary>
    public static FaultGraph Build(
        IEnumerable<Fault> faults, IEnumerable<Symptom> symptoms, IEnumerable<Check> checks,
        IEnumerable<Repair> repairs, AccessStates access) =>
        GraphBuilder.Build(faults, symptoms, checks, repairs, access);

    /// <summary>
    /// The graph with some parts in place of those that have their ids, or added; what is wrong with them is in its
    /// <see cref="Findings"/>.
    /// </summary>
    /// <remarks>Where nothing was wrong before and nothing is now, only these parts are inspected.</remarks>
    public FaultGraph With(GraphEdit edit) => GraphBuilder.Edit(this, parts, ofParts, edit);

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
    public ImmutableArray<Finding> Findings => findings.Value;

    /// <summary>The vertices, in the order symptoms, faults, checks, repairs, access states, each by id.</summary>
    public IEnumerable<Node> Nodes => graph.Value.Vertices;

    /// <summary>The edges, grouped by source in the order of <see cref="Nodes"/>.</summary>
    public IEnumerable<Link> Links => graph.Value.Edges;

    public IEnumerable<Link> LinksFrom(Node node) =>
        graph.Value.TryGetOutEdges(node, out IEnumerable<Link> links) ? links : [];
    public IEnumerable<Link> LinksTo(Node node) =>
        graph.Value.TryGetInEdges(node, out IEnumerable<Link> links) ? links : [];

    public Fault? Find(FaultId id) => faults.GetValueOrDefault(id);
    public Symptom? Find(SymptomId id) => symptoms.GetValueOrDefault(id);
    public Check? Find(CheckId id) => checks.GetValueOrDefault(id);
    public Repair? Find(RepairId id) => repairs.GetValueOrDefault(id);

    /// <summary>The symptoms a fault can cause.</summary>
    public IEnumerable<Symptom> SymptomsOf(FaultId fault) =>
        index.Value.Symptoms(fault);

    /// <summary>The faults that can cause a symptom.</summary>
    public IEnumerable<Fault> CausesOf(SymptomId symptom) =>
        Find(symptom) is { } known ? known.Causes.Keys.Select(fault => faults[fault]) : [];

    /// <summary>The repairs that cure a fault.</summary>
    public IEnumerable<Repair> RepairsOf(FaultId fault) =>
        index.Value.Repairs(fault);

    /// <summary>The checks that give a fault a row of its own that differs from another fault's.</summary>
    public IEnumerable<Check> ChecksOf(FaultId fault) =>
        index.Value.Checks(fault);

    /// <summary>The faults to which a check gives a row of their own that differs from another fault's.</summary>
    public IEnumerable<Fault> FaultsSeenBy(CheckId check) =>
        Find(check) is { } known
            ? known.Likelihoods.Keys.Where(fault => FaultIndex.SetsApart(known, fault, faults.Count))
                .Select(fault => faults[fault])
            : [];

    /// <summary>The checks that can tell at least two of these faults apart.</summary>
    public IEnumerable<Check> ChecksSeparating(IReadOnlyCollection<FaultId> among) =>
        ChecksOf(among).Where(check => check.Separates(among));

    /// <summary>
    /// The checks of any of these faults; one without a row of its own for any shows the same under all.
    /// </summary>
    public IEnumerable<Check> ChecksOf(IEnumerable<FaultId> among) =>
        among.SelectMany(index.Value.Checks).DistinctBy(check => check.Id).OrderBy(check => check.Id);

    /// <summary>The repairs that cure any of these faults.</summary>
    internal IEnumerable<Repair> RepairsOf(IEnumerable<FaultId> among) =>
        among.SelectMany(index.Value.Repairs).DistinctBy(repair => repair.Id).OrderBy(repair => repair.Id);

    /// <summary>
    /// Minutes of every check and every repair once, each reached from farthest away, each part changed for nothing.
    /// </summary>
    internal double Everything => everything.Value;

    /// <summary>The checks and repairs that may be done in an access state.</summary>
    public IEnumerable<Node> DoneIn(AccessId access) =>
        LinksTo(new Node.OfAccess(access)).Where(link => link is not Link.LeadsTo).Select(link => link.Source);

    /// <summary>What the evidence says about each fault.</summary>
    /// <param name="applicable">The faults the unit can have; null means all.</param>
    /// <param name="floor">
    /// When outcomes contradict each other; null means <see cref="ContradictionFloor.Usual"/>.
    /// </param>
    /// <exception cref="ArgumentException">
    /// Evidence names a part that is not in the graph, or is out of its range.
    /// </exception>
    public Belief Believe(IEnumerable<Evidence> evidence, IReadOnlySet<FaultId>? applicable = null,
        ContradictionFloor? floor = null) =>
        BelieveWhere(applicable is null ? null : applicable.Contains, evidence, floor);

    /// <summary>The same, asking of each fault whether the unit can have it.</summary>
    /// <param name="applies">Asked only of the faults in question; null means that it can have all.</param>
    /// <exception cref="ArgumentException">
    /// Evidence names a part that is not in the graph, or is out of its range.
    /// </exception>
    public Belief BelieveWhere(Predicate<FaultId>? applies, IEnumerable<Evidence> evidence,
        ContradictionFloor? floor = null) =>
        BeliefReckoning.Reckon(this, [.. evidence], applies, floor ?? ContradictionFloor.Usual);

    private double SumOfEverything()
    {
        double way = Access.All.SelectMany(from => Access.All.Select(to => Access.Minutes(from.Id, to.Id)))
            .Where(double.IsFinite).Max();
        return Checks.Sum(check => check.Minutes + way)
            + Repairs.Sum(repair => repair.Minutes + repair.VerifyMinutes + repair.WrongMinutes + 2 * way);
    }
}
