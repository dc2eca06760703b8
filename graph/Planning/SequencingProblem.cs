using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Planning;

/// <summary>Which checks and repairs to do in which order, so that the expected minutes are least.</summary>
/// <remarks>
/// One fault is present. A check is used at most once and its outcome depends on the fault only. A repair is paid in
/// full, verification included, whether or not it cures; one that does not excludes the faults it fixes. Going from
/// one access state to another costs what <see cref="AccessStates"/> says. Faults, checks, repairs and states are
/// numbered in the order given, which is also the order in which ties are broken. Everything is held in flat arrays,
/// row after row.
/// </remarks>
public sealed class SequencingProblem
{
    /// <summary>Likelihoods and prices closer than this count as equal.</summary>
    internal const double Same = 1e-12;

    private const int LargeSize = 400, ManyChecks = 16;

    private readonly Dictionary<CheckId, int> checkPlaces;
    private readonly Dictionary<RepairId, int> repairPlaces;

    /// <exception cref="ArgumentException">
    /// No fault; a prior that is not above 0; a part twice; a row of the wrong length; a part that refers to an
    /// unknown one; an access state that cannot be reached from another; a fault to be repaired that no repair cures.
    /// </exception>
    public SequencingProblem(
        Objective objective, IEnumerable<Fault> faults, IEnumerable<Check> checks, IEnumerable<Repair> repairs,
        AccessStates access)
        : this(objective, [.. faults], [.. checks], [.. repairs], access, known: null)
    {
    }

    /// <param name="known">
    /// The rows of the graph that the faults and checks are taken from; null when they have no graph.
    /// </param>
    internal SequencingProblem(
        Objective objective, ImmutableArray<Fault> faults, ImmutableArray<Check> checks, ImmutableArray<Repair> repairs,
        AccessStates access, LikelihoodTable? known)
    {
        Objective = objective;
        Access = access;
        Faults = faults;
        Checks = checks;
        Repairs = repairs;
        ProblemInspection.Inspect(this, rows: known is null);
        checkPlaces = Checks.Select((check, place) => (check.Id, place)).ToDictionary();
        repairPlaces = Repairs.Select((repair, place) => (repair.Id, place)).ToDictionary();
        Priors = [.. Faults.Select(fault => fault.Weight)];
        Travel = TravelMinutes(access);
        StartState = access.IndexOf(access.Start);
        VerifyState = access.Verify is { } verify ? access.IndexOf(verify) : -1;
        CheckTable = new CheckTable(this, known);
        RepairTable = new RepairTable(this);
    }

    public Objective Objective { get; }
    public ImmutableArray<Fault> Faults { get; }
    public ImmutableArray<Check> Checks { get; }
    public ImmutableArray<Repair> Repairs { get; }
    public AccessStates Access { get; }

    /// <summary>Faults × (checks + repairs): what weighing one position goes through.</summary>
    public int Size => Faults.Length * (Checks.Length + Repairs.Length);

    /// <summary>
    /// True when a search will hardly get to the end: what noisy checks may show in all orders doubles with each check.
    /// </summary>
    internal bool IsLarge => Size > LargeSize || Checks.Length > ManyChecks;

    internal int StateCount => Access.All.Length;
    internal double[] Priors { get; }
    internal int StartState { get; }

    /// <summary>−1 when a repair is verified where it was done.</summary>
    internal int VerifyState { get; }

    /// <summary>Minutes from state to state, row = from.</summary>
    internal double[] Travel { get; }

    internal CheckTable CheckTable { get; }
    internal RepairTable RepairTable { get; }

    /// <summary>Where work begins: priors as they are, nothing used.</summary>
    public Position Begin() => new(this, Priors, new bool[Checks.Length], StartState);

    internal int PlaceOf(CheckId id) => checkPlaces.TryGetValue(id, out int place)
        ? place : throw new ArgumentException($"the problem has no check {id}");

    internal int PlaceOf(RepairId id) => repairPlaces.TryGetValue(id, out int place)
        ? place : throw new ArgumentException($"the problem has no repair {id}");

    private static double[] TravelMinutes(AccessStates access)
    {
        int count = access.All.Length;
        double[] travel = new double[count * count];
        for (int from = 0; from < count; from++)
            for (int to = 0; to < count; to++)
                travel[from * count + to] = access.Minutes(access.All[from].Id, access.All[to].Id);
        return travel;
    }
}
