using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning.Search;

namespace DxAssistant.Graph.Planning.Baselines;

/// <summary>What the simple policies share; see tests/Reference/sequencing.md, "Baselines".</summary>
internal static class CommonRules
{
    private const double EnoughToRepair = 0.95;

    /// <summary>A candidate replaces an earlier one only when it is better by more than this.</summary>
    public const double Tie = SequencingProblem.Same;

    /// <summary>The checks that are unused and tell live faults apart, in the order of the problem.</summary>
    public static IEnumerable<int> UsefulChecks(SequencingProblem problem, Position position)
    {
        for (int check = 0; check < problem.Checks.Length; check++)
            if (!position.Used[check] && problem.CheckTable.Separates(check, position.WeightSpan)) yield return check;
    }

    /// <summary>Some repair would succeed with probability 0.95 or more; or, to isolate, one fault is left.</summary>
    public static bool IsConfident(SequencingProblem problem, Position position)
    {
        if (problem.Objective == Objective.Isolate) return position.WeightSpan.LiveFaults() == 1;
        double enough = EnoughToRepair * position.WeightSpan.Mass();
        for (int repair = 0; repair < problem.Repairs.Length; repair++)
            if (problem.RepairTable.Cures(repair, position.WeightSpan) >= enough) return true;
        return false;
    }

    /// <summary>The repair with the largest P(it cures) / price; nothing when the problem asks for none.</summary>
    public static PlannedStep BestRepair(SequencingProblem problem, Position position)
    {
        if (problem.Objective == Objective.Isolate) return new PlannedStep.Nothing();
        RepairTable repairs = problem.RepairTable;
        double mass = position.WeightSpan.Mass(), bestRate = 0;
        int best = -1;
        for (int repair = 0; repair < repairs.Count; repair++)
        {
            double rate = repairs.Cures(repair, position.WeightSpan) / mass / repairs.Price(position.State, repair);
            if (rate > 0 && (best < 0 || rate > bestRate + Tie)) (best, bestRate) = (repair, rate);
        }

        return new PlannedStep.DoRepair(
            problem.Repairs[best].Id, AccessAt(problem, repairs.CheapestAccess(position.State, best)));
    }

    /// <summary>The check, done in its cheapest access state.</summary>
    public static PlannedStep DoCheck(SequencingProblem problem, Position position, int check) =>
        new PlannedStep.DoCheck(
            problem.Checks[check].Id, AccessAt(problem, problem.CheckTable.CheapestAccess(position.State, check)));

    public static AccessId AccessAt(SequencingProblem problem, int state) => problem.Access.All[state].Id;
}
