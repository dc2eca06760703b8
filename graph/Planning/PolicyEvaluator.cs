using DxAssistant.Graph.Planning.Search;

namespace DxAssistant.Graph.Planning;

/// <summary>The expected minutes of following a policy, by going through everything that can happen.</summary>
/// <remarks>Remembers positions, so one evaluator may be asked about many positions of its problem.</remarks>
/// <param name="mostPositions">Past so many positions it gives up.</param>
public sealed class PolicyEvaluator(SequencingProblem problem, IPolicy policy, int mostPositions = int.MaxValue)
{
    private readonly PositionIndex index = new(problem);
    private readonly List<double> known = [];

    /// <summary>
    /// Expected minutes to the end, when the faults are as likely as the position says; not a number when it gave up.
    /// </summary>
    /// <exception cref="InvalidOperationException">
    /// The policy stops before a repair, or proposes what cannot be done.
    /// </exception>
    public double Minutes(Position position)
    {
        if (problem.Objective == Objective.Isolate && position.WeightSpan.LiveFaults() < 2) return 0;
        if (!index.Add(position, out int number)) return known[number];
        known.Add(double.NaN);
        if (known.Count > mostPositions) return double.NaN;
        double minutes = policy.Next(problem, position) switch
        {
            PlannedStep.DoCheck step => Through(position, step),
            PlannedStep.DoRepair step => Through(position, step),
            _ when problem.Objective == Objective.Isolate => 0,
            _ => throw new InvalidOperationException("the policy stops before the unit is repaired"),
        };
        return known[number] = minutes;
    }

    /// <summary>Expected minutes that follow once the check is done and paid, over all it may show.</summary>
    internal double MinutesAfterCheck(Position position, int check, int access)
    {
        double mass = position.WeightSpan.Mass(), minutes = 0;
        for (int outcome = 0; outcome < problem.CheckTable.Outcomes(check); outcome++)
        {
            Position after = position.Saw(check, outcome, access);
            double share = after.WeightSpan.Mass() / mass;
            if (share > 0) minutes += share * Minutes(after);
        }

        return minutes;
    }

    /// <summary>Expected minutes that follow once the repair is done, verified and paid.</summary>
    internal double MinutesAfterRepair(Position position, int repair, int access)
    {
        Position after = position.Failed(repair, access);
        double share = after.WeightSpan.Mass() / position.WeightSpan.Mass();
        return share > 0 ? share * (problem.RepairTable.Wrong(repair) + Minutes(after)) : 0;
    }

    private double Through(Position position, PlannedStep.DoCheck step)
    {
        int check = problem.PlaceOf(step.Check), access = problem.Access.IndexOf(step.Access);
        if (position.Used[check]) throw new InvalidOperationException($"check {step.Check} is used already");
        return problem.Travel[position.State * problem.StateCount + access] + problem.CheckTable.Minutes[check]
            + MinutesAfterCheck(position, check, access);
    }

    private double Through(Position position, PlannedStep.DoRepair step)
    {
        int repair = problem.PlaceOf(step.Repair), access = problem.Access.IndexOf(step.Access);
        if (!(problem.RepairTable.Cures(repair, position.WeightSpan) > 0))
            throw new InvalidOperationException($"repair {step.Repair} cures no fault that is left");
        return problem.RepairTable.Price(position.State, repair, access) + MinutesAfterRepair(position, repair, access);
    }
}
