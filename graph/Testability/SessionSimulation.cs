using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Testability;

/// <summary>
/// Plays sessions of a problem: a fault is drawn, then each outcome of the checks that the policy asks for.
/// </summary>
/// <param name="problem">One whose objective is a repair.</param>
public sealed class SessionSimulation(SequencingProblem problem, IPolicy policy, Draws draws)
{
    private readonly RememberedPolicy remembered = new(problem, policy);

    /// <summary>Plays one session to its end.</summary>
    /// <exception cref="InvalidOperationException">The policy stops before the unit is repaired.</exception>
    public SessionTally Play()
    {
        int fault = draws.NextPlace(problem.Priors);
        Position here = problem.Begin();
        int checks = 0, repairs = 0;
        double minutes = 0;
        while (true)
        {
            switch (remembered.Next(problem, here))
            {
                case PlannedStep.DoCheck step:
                    checks++;
                    here = Check(here, step, fault, ref minutes);
                    break;
                case PlannedStep.DoRepair { Repair: var id } step:
                    bool handedOver = id == RepairId.HandOver;
                    if (!handedOver) repairs++;
                    Position? after = Repair(here, step, fault, ref minutes);
                    if (after is null) return new SessionTally(checks, repairs, minutes, Mended: !handedOver);
                    here = after;
                    break;
                default:
                    throw new InvalidOperationException("the policy stops before the unit is repaired");
            }
        }
    }

    private Position Check(Position here, PlannedStep.DoCheck step, int fault, ref double minutes)
    {
        int check = problem.PlaceOf(step.Check), access = problem.Access.IndexOf(step.Access);
        minutes += problem.Travel[here.State * problem.StateCount + access] + problem.CheckTable.Minutes[check];
        double[] row = new double[problem.CheckTable.Outcomes(check)];
        for (int outcome = 0; outcome < row.Length; outcome++)
            row[outcome] = problem.CheckTable.Column(check, outcome)[fault];
        return here.Saw(check, draws.NextPlace(row), access);
    }

    /// <summary>The position after the repair, or null when it mended the unit.</summary>
    private Position? Repair(Position here, PlannedStep.DoRepair step, int fault, ref double minutes)
    {
        int repair = problem.PlaceOf(step.Repair), access = problem.Access.IndexOf(step.Access);
        minutes += problem.RepairTable.Price(here.State, repair, access);
        return problem.RepairTable.Fixes(repair).Contains(fault) ? null : here.Failed(repair, access);
    }
}
