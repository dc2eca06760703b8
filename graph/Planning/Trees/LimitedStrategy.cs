using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning.Baselines;
using DxAssistant.Graph.Planning.Search;

namespace DxAssistant.Graph.Planning.Trees;

/// <summary>
/// The least expected minutes when no more than a given number of checks is written down; where they are used up,
/// repair follows repair.
/// </summary>
/// <remarks>
/// After Raghavan, Shakeri and Pattipati, Test sequencing problems arising in test planning and design for
/// testability, IEEE Trans. SMC-A 29(2), 1999, 153-167, whose fourth problem limits the storage cost of the tests in
/// a diagnostic strategy. Only its abstract was at hand. What is done here is our own: each check of the tree costs
/// one, also when it stands in two branches, because a page has to print it twice; the paper's own cost and methods
/// may differ. A table of minutes by number of checks is made for each position, and a check shares what it has left
/// among its outcomes as in a knapsack (dynamic programming, so that the split is exact). <see cref="Exact"/> weighs
/// every check and repair; otherwise only those that the live planner ranks first, which is no longer the optimum.
/// With a <see cref="ProofRule"/> no repair comes before its proof, and where the checks are used up the tree ends.
/// </remarks>
public sealed class LimitedStrategy
{
    // So many checks into a walk the second best step hardly changes what the page says; weighing it doubles the work.
    private const int WideChecks = 3;

    private readonly SequencingProblem problem;
    private readonly int most;
    private readonly int width;
    private readonly double leastShare;
    private readonly LivePlanner planner;
    private readonly PositionIndex index;
    private readonly RepairsOnly repairsOnly;
    private readonly List<LimitedOutlook?> known = [];
    private readonly double everything;
    private readonly ProofRule? rule;

    /// <param name="most">Most checks in the tree; 0 or more.</param>
    /// <param name="width">
    /// How many of the planner's steps are weighed at each position near the beginning; above 0. Later one.
    /// </param>
    /// <param name="leastShare">Where fewer of all walks come by, only repairs are planned; 0 to 1.</param>
    /// <param name="work">The live planner's work for a position.</param>
    /// <param name="rule">What must be proven before a repair; null when each repair may be tried.</param>
    /// <exception cref="ArgumentException">The problem asks for no repair.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public LimitedStrategy(
        SequencingProblem problem, int most, int width, double leastShare, int work = LivePlanner.UsualWork,
        ProofRule? rule = null)
    {
        if (problem.Objective != Objective.Repair)
            throw new ArgumentException("means nothing without repairs", nameof(problem));
        ArgumentOutOfRangeException.ThrowIfNegative(most);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 1);
        if (!(leastShare is >= 0 and <= 1))
            throw new ArgumentOutOfRangeException(nameof(leastShare), leastShare, "must be 0 to 1");
        (this.problem, this.most, this.width, this.leastShare, this.rule) = (problem, most, width, leastShare, rule);
        planner = new LivePlanner(work);
        index = new PositionIndex(problem);
        repairsOnly = new RepairsOnly(problem);
        everything = problem.Begin().WeightSpan.Mass();
    }

    /// <summary>
    /// The optimum; for small problems only, its work grows with everything that can happen in all orders.
    /// </summary>
    public static LimitedStrategy Exact(SequencingProblem problem, int most, ProofRule? rule = null) =>
        new(problem, most, int.MaxValue, 0, rule: rule);

    private static int Used(Position here) => here.Used.Count(true);

    private bool IsExact => width == int.MaxValue;

    /// <summary>Expected minutes to a verified repair with so many checks written down.</summary>
    /// <param name="checks">0 to the most there may be, ends included.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="checks"/> is outside that range.</exception>
    public double Minutes(int checks)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(checks);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(checks, most);
        return From(problem.Begin()).Minutes[checks];
    }

    /// <summary>What is written down at a position.</summary>
    public TreeStep Next(Position position, int checks) => From(position).Step(checks);

    private LimitedOutlook From(Position here)
    {
        if (!index.Add(here, out int number)) return known[number]!;
        known.Add(null);
        LimitedOutlook outlook = new(most);
        if (IsExact || (Used(here) < most && here.WeightSpan.Mass() / everything >= leastShare)) Weigh(here, outlook);
        else OfferRepairs(here, outlook);
        known[number] = outlook;
        return outlook;
    }

    private void Weigh(Position here, LimitedOutlook outlook)
    {
        if (rule is not null || !IsExact) OfferRepairs(here, outlook);
        foreach (PlannedStep step in Candidates(here).Select(step => Proven(here, step)))
            switch (step)
            {
                case PlannedStep.DoCheck check: Offer(here, check, outlook); break;
                case PlannedStep.DoRepair repair: Offer(here, repair, outlook); break;
            }
    }

    // What can be done without a check.
    private void OfferRepairs(Position here, LimitedOutlook outlook)
    {
        if (rule is null)
        {
            outlook.Offer(BestRepair(here), RepairsAlone(here), [], checks: 0);
            return;
        }

        outlook.Offer(new PlannedStep.Nothing(), rule.LeavingMinutes, [], checks: 0);
        if (BestRepair(here) is var repair && rule.Before(here, repair.Repair) is null) Offer(here, repair, outlook);
    }

    // The step, or the check that must come before it.
    private PlannedStep Proven(Position here, PlannedStep step) =>
        step is PlannedStep.DoRepair repair && rule?.Before(here, repair.Repair) is { } proof
            ? new PlannedStep.DoCheck(proof, problem.Checks[problem.PlaceOf(proof)].Access
                .MinBy(access => problem.Access.Minutes(here.Access, access)))
            : step;

    private void Offer(Position here, PlannedStep.DoCheck step, LimitedOutlook outlook)
    {
        if (most == 0) return;
        int check = problem.PlaceOf(step.Check), access = problem.Access.IndexOf(step.Access);
        double price = problem.Travel[here.State * problem.StateCount + access] + problem.CheckTable.Minutes[check];
        outlook.Offer(step, price,
            [.. here.Foresee(step.Check, step.Access).Select(seen => (seen.Probability, From(seen.After)))], checks: 1);
    }

    private void Offer(Position here, PlannedStep.DoRepair step, LimitedOutlook outlook)
    {
        int repair = problem.PlaceOf(step.Repair), access = problem.Access.IndexOf(step.Access);
        double price = problem.RepairTable.Price(here.State, repair, access);
        Position after = here.Failed(repair, access);
        double share = after.WeightSpan.Mass() / here.WeightSpan.Mass();
        if (share > 0)
            outlook.Offer(step, price + share * problem.RepairTable.Wrong(repair), [(share, From(after))], checks: 0);
        else outlook.Offer(step, price, [], checks: 0);
    }

    private IEnumerable<PlannedStep> Candidates(Position here) =>
        IsExact
            ? Everything(here)
            : planner.Rank(problem, here).Take(Used(here) < WideChecks ? width : 1).Select(option => option.Step);

    private IEnumerable<PlannedStep> Everything(Position here)
    {
        for (int repair = 0; repair < problem.Repairs.Length; repair++)
            if (problem.RepairTable.Cures(repair, here.WeightSpan) > 0)
                foreach (AccessId access in problem.Repairs[repair].Access)
                    yield return new PlannedStep.DoRepair(problem.Repairs[repair].Id, access);
        foreach (int check in CommonRules.UsefulChecks(problem, here).ToArray())
            foreach (AccessId access in problem.Checks[check].Access)
                yield return new PlannedStep.DoCheck(problem.Checks[check].Id, access);
    }

    private double RepairsAlone(Position here)
    {
        double mass = here.WeightSpan.Mass();
        return repairsOnly.From(here.WeightSpan, mass, here.State) / mass;
    }

    // The order that RepairsOnly reckons with: what cures most for what it costs in vain.
    private PlannedStep.DoRepair BestRepair(Position here)
    {
        ReadOnlySpan<double> speeds = problem.RepairTable.Speeds(here.State);
        (int best, double bestRate) = (0, -1);
        for (int repair = 0; repair < problem.Repairs.Length; repair++)
        {
            double rate = problem.RepairTable.Cures(repair, here.WeightSpan) * speeds[repair];
            if (rate > bestRate) (best, bestRate) = (repair, rate);
        }

        return new PlannedStep.DoRepair(
            problem.Repairs[best].Id,
            CommonRules.AccessAt(problem, problem.RepairTable.CheapestAccess(here.State, best)));
    }
}
