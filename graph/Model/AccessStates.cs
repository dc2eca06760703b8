using System.Collections.Immutable;

namespace DxAssistant.Graph.Model;

/// <summary>The access states of a unit and the minutes between them.</summary>
/// <remarks>Minutes are those of the shortest way, so that a detour never pays.</remarks>
public sealed class AccessStates
{
    private readonly ImmutableSortedDictionary<AccessId, int> places;
    private readonly double[] minutes;
    private readonly int[] nextHop;
    private readonly ImmutableArray<AccessMove> direct;

    /// <summary>Completes the direct moves to all shortest ways.</summary>
    /// <param name="states">In the order in which ties between them are broken; at least one, ids unique.</param>
    /// <param name="moves">Where a pair is missing there is no direct way.</param>
    /// <param name="start">Where work begins.</param>
    /// <param name="verify">Where a repair is verified; null means where it was done.</param>
    /// <exception cref="ArgumentException">
    /// No state, an id twice, an id that is not a state, or minutes below 0 or NaN.
    /// </exception>
    public AccessStates(
        IEnumerable<AccessState> states, IEnumerable<AccessMove> moves, AccessId start, AccessId? verify = null)
    {
        All = [.. states];
        if (All.IsEmpty) throw new ArgumentException("there must be at least one access state", nameof(states));
        places = All.Select((state, place) => KeyValuePair.Create(state.Id, place)).ToImmutableSortedDictionary();
        Start = Known(start, nameof(start));
        Verify = verify is { } there ? Known(there, nameof(verify)) : null;
        minutes = new double[All.Length * All.Length];
        nextHop = new int[All.Length * All.Length];
        direct = [.. moves];
        EnterDirect();
        CompleteByShortestWays();
    }

    /// <summary>One state in which everything is done; for units and tests where access plays no part.</summary>
    public static AccessStates OnlyOne { get; } =
        new([new AccessState(new AccessId("any"), Role.Anyone)], [], new AccessId("any"));

    /// <summary>All states, in the order given.</summary>
    public ImmutableArray<AccessState> All { get; }

    /// <summary>Where work begins.</summary>
    public AccessId Start { get; }

    /// <summary>Where a repair is verified; null means where it was done.</summary>
    public AccessId? Verify { get; }

    public bool Contains(AccessId id) => places.ContainsKey(id);

    /// <summary>The place of a state in <see cref="All"/>, or −1.</summary>
    public int IndexOf(AccessId id) => places.GetValueOrDefault(id, -1);

    /// <summary>Minutes of the shortest way; infinite when there is none.</summary>
    /// <exception cref="ArgumentException">An id is not a state.</exception>
    public double Minutes(AccessId from, AccessId to) =>
        minutes[Place(from) * All.Length + Place(to)];

    /// <summary>The states passed on the shortest way, both ends included; empty when there is none.</summary>
    /// <exception cref="ArgumentException">An id is not a state.</exception>
    public ImmutableArray<AccessId> Way(AccessId from, AccessId to)
    {
        int here = Place(from), there = Place(to);
        if (double.IsInfinity(minutes[here * All.Length + there])) return [];
        ImmutableArray<AccessId>.Builder way = ImmutableArray.CreateBuilder<AccessId>();
        for (way.Add(from); here != there; way.Add(All[here].Id)) here = nextHop[here * All.Length + there];
        return way.ToImmutable();
    }

    /// <summary>
    /// The states that a person can bring the unit to, and back, from where it stands, by ways open to that person.
    /// </summary>
    /// <param name="refused">States the unit cannot be brought into here, whoever asks; null means none.</param>
    /// <remarks>
    /// Work begins at <paramref name="here"/>. The state for verifying is null when it is not among them.
    /// </remarks>
    /// <exception cref="ArgumentException"><paramref name="here"/> is not a state.</exception>
    public AccessStates OpenTo(Role who, AccessId here, IReadOnlySet<AccessId>? refused = null)
    {
        Known(here, nameof(here));
        AccessStates allowed = Among(All.Where(state => state.Id == here || MayEnter(state)), here);
        return Among(allowed.All.Where(ThereAndBack), here);

        bool MayEnter(AccessState state) => who.May(state.Who) && refused?.Contains(state.Id) != true;
        bool ThereAndBack(AccessState state) =>
            double.IsFinite(allowed.Minutes(here, state.Id)) && double.IsFinite(allowed.Minutes(state.Id, here));
    }

    private AccessStates Among(IEnumerable<AccessState> states, AccessId start)
    {
        ImmutableArray<AccessState> kept = [.. states];
        ImmutableHashSet<AccessId> ids = [.. kept.Select(state => state.Id)];
        AccessId? verify = Verify is { } there && ids.Contains(there) ? there : null;
        IEnumerable<AccessMove> moves = direct.Where(move => ids.Contains(move.From) && ids.Contains(move.To));
        return new AccessStates(kept, moves, start, verify);
    }

    private void EnterDirect()
    {
        Array.Fill(minutes, double.PositiveInfinity);
        for (int here = 0; here < All.Length; here++) minutes[here * All.Length + here] = 0;
        foreach (AccessMove move in direct)
        {
            if (!(move.Minutes >= 0))
                throw new ArgumentException($"{move.From} to {move.To}: minutes must be 0 or more, not {move.Minutes}");
            int cell = Place(move.From) * All.Length + Place(move.To);
            minutes[cell] = Math.Min(minutes[cell], move.Minutes);
            nextHop[cell] = Place(move.To);
        }
    }

    // Floyd and Warshall: a way through one more state, as long as it is shorter.
    private void CompleteByShortestWays()
    {
        int count = All.Length;
        for (int via = 0; via < count; via++)
            for (int from = 0; from < count; from++)
                for (int to = 0; to < count; to++)
                {
                    double detour = minutes[from * count + via] + minutes[via * count + to];
                    if (!(detour < minutes[from * count + to])) continue;
                    minutes[from * count + to] = detour;
                    nextHop[from * count + to] = nextHop[from * count + via];
                }
    }

    private AccessId Known(AccessId id, string parameter) =>
        Contains(id) ? id : throw new ArgumentException($"{id} is not an access state", parameter);

    private int Place(AccessId id) =>
        places.TryGetValue(id, out int place) ? place : throw new ArgumentException($"{id} is not an access state");
}
