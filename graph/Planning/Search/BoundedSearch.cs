using System.Diagnostics;

namespace DxAssistant.Graph.Planning.Search;

/// <summary>Narrows the expected minutes of a position between two bounds, trial after trial.</summary>
/// <remarks>
/// A trial walks from the root, by the most promising action and the branch that is most in doubt, to a position not
/// yet expanded, expands it, and carries the new bounds back. When the bounds of a position meet, its value is exact.
/// In a problem that can be searched to its end the action with the least lower bound is the most promising; in a
/// larger one the lower bounds are too loose to lead, and the middle between the bounds does. Cut short, the action
/// with the least upper bound is a plan whose cost is known not to be more.
/// (Bounded dynamic programming in real time: McMahan, Likhachev and Gordon, ICML 2005, from memory.)
/// </remarks>
internal sealed class BoundedSearch
{
    // A large problem has so many positions one step ahead; growing past them by halves would copy them all.
    private const int Wide = 1_000, RoomForWide = 1_024, UsualRoom = 256;

    private readonly SequencingProblem problem;
    private readonly double leaning;
    private readonly PositionPool pool;
    private readonly Expansion expansion;
    private readonly List<int> way = [];

    public BoundedSearch(SequencingProblem problem, Position start, SearchSetting? setting = null)
    {
        this.problem = problem;
        setting ??= SearchSetting.Usual;
        leaning = problem.IsLarge ? setting.Leaning : 0;
        pool = new PositionPool(
            problem.Faults.Length, problem.Checks.Length, problem.Size > Wide ? RoomForWide : UsualRoom);
        expansion = new Expansion(problem, pool, setting);
        Root = expansion.Enter(start);
        expansion.Expand(Root);
        Narrow(Root);
    }

    public int Root { get; }

    /// <summary>Gives back what the search borrowed; nothing can be asked of it afterwards.</summary>
    public void GiveBack()
    {
        expansion.GiveBack();
        pool.GiveBack();
    }

    /// <summary>How many positions were weighed so far.</summary>
    public int Work => expansion.Weighed;

    public double Lower(int position) => pool.Lower[position];
    public double Upper(int position) => pool.Upper[position];

    /// <summary>
    /// No plan takes fewer expected minutes from the root: the search's own bound, or what the doubt there costs when
    /// the search did not get to the end.
    /// </summary>
    public double LeastFromRoot() => IsExact(Root)
        ? Lower(Root)
        : Math.Min(Upper(Root), Math.Max(
            Lower(Root), new LowerBound(problem).TighterFrom(pool.Weights(Root), pool.Useful(Root), pool.State(Root))));

    /// <summary>True when nothing is left to know: the bounds differ by no more than rounding.</summary>
    public bool IsExact(int position) => HaveMet(pool.Lower[position], pool.Upper[position]);

    /// <summary>
    /// What can be done at the root: checks in order, then repairs in order, each in each of its access states.
    /// </summary>
    public ReadOnlySpan<SearchAction> RootActions =>
        expansion.Actions.Items.Slice(pool.FirstAction[Root], pool.ActionCount[Root]);

    /// <summary>The bounds of doing an action and planning as well as possible afterwards.</summary>
    public (double Lower, double Upper) Bounds(in SearchAction action)
    {
        double least = action.Price, most = action.Price;
        foreach (Branch branch in BranchesOf(action))
        {
            least += branch.Probability * pool.Lower[branch.Position];
            most += branch.Probability * pool.Upper[branch.Position];
        }

        return (least, most);
    }

    /// <summary>Trials until the root is exact or the work is used up.</summary>
    public void Run(int workLimit) => Run(Root, workLimit);

    /// <summary>Makes every action of the root exact, not only the best, unless the work is used up before.</summary>
    public void RunAllActions(int workLimit)
    {
        foreach (SearchAction action in RootActions.ToArray())
            foreach (Branch branch in BranchesOf(action).ToArray())
                Run(branch.Position, workLimit);
        Narrow(Root);
    }

    private void Run(int from, int workLimit)
    {
        while (!IsExact(from) && Work < workLimit && Trial(from)) ;
    }

    /// <returns>False when nothing was left to expand: the bounds differ by rounding.</returns>
    private bool Trial(int from)
    {
        way.Clear();
        int here = from;
        while (pool.FirstAction[here] >= 0)
        {
            way.Add(here);
            int next = MostInDoubt(Narrow(here));
            if (next < 0) break;
            here = next;
        }

        bool isNew = pool.FirstAction[here] < 0;
        if (isNew)
        {
            expansion.Expand(here);
            Narrow(here);
        }

        for (int step = way.Count - 1; step >= 0; step--) Narrow(way[step]);
        return isNew;
    }

    /// <summary>The branch whose gap weighs most, or −1 when all are exact.</summary>
    private int MostInDoubt(in SearchAction action)
    {
        (int position, double widest) = (-1, 0);
        foreach (Branch branch in BranchesOf(action))
        {
            double gap = branch.Probability * (pool.Upper[branch.Position] - pool.Lower[branch.Position]);
            if (gap > widest && !IsExact(branch.Position)) (position, widest) = (branch.Position, gap);
        }

        return position;
    }

    /// <summary>Takes over the bounds of the actions.</summary>
    /// <returns>The most promising of the actions whose bounds do not meet; the first on a tie.</returns>
    private SearchAction Narrow(int position)
    {
        SearchAction promising = default;
        double least = double.PositiveInfinity, most = double.PositiveInfinity, best = double.PositiveInfinity;
        int end = pool.FirstAction[position] + pool.ActionCount[position];
        ReadOnlySpan<SearchAction> actions = expansion.Actions.Items;
        for (int index = pool.FirstAction[position]; index < end; index++)
        {
            ref readonly SearchAction action = ref actions[index];
            (double lower, double upper) = Bounds(action);
            (least, most) = (Math.Min(least, lower), Math.Min(most, upper));
            double judged = lower + leaning * (upper - lower);
            if (judged < best && !HaveMet(lower, upper)) (best, promising) = (judged, action);
        }

        // Nothing left to do: finished, or nothing tells the last faults apart.
        if (pool.ActionCount[position] == 0) least = most = 0;
        pool.Upper[position] = Math.Min(pool.Upper[position], most);
        double lowest = Math.Max(pool.Lower[position], least);
        Debug.Assert(
            pool.ActionCount[position] == 0 || lowest <= pool.Upper[position]
                + Rounding * (1 + pool.Upper[position]), "a lower bound passes the cost");
        pool.Lower[position] = Math.Min(lowest, pool.Upper[position]);
        return promising;
    }

    // Sums over hundreds of faults in another order differ by as much.
    private const double Rounding = 1e-9;

    private static bool HaveMet(double lower, double upper) => upper - lower <= 1e-12 * (1 + upper);

    private ReadOnlySpan<Branch> BranchesOf(in SearchAction action) =>
        expansion.Branches.Items.Slice(action.FirstBranch, action.BranchCount);
}
