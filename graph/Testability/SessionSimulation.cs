using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Testability;

/// <summary>
/// Plays sessions of a problem: a unit is drawn, its fault and what each check shows, then the policy walks.
/// </summary>
/// <remarks>
/// What a check shows depends on the unit alone and not on when it is asked, so that two policies can be played on the
/// same units and their difference is not drowned by the luck of the draw.
/// </remarks>
/// <param name="problem">One whose objective is a repair.</param>
/// <param name="draws">Where the units come from.</param>
/// <param name="leftUnfound">What it costs when watching leaves a fault unfound, priced minutes; 0 or more.</param>
public sealed class SessionSimulation(SequencingProblem problem, IPolicy policy, Draws draws, double leftUnfound = 0)
{
    // The checks of a unit draw from numbers that lie this far apart, the golden ratio as in Draws.
    private const ulong Apart = 0x9E37_79B9_7F4A_7C15;

    /// <summary>
    /// The repairs that change a part; null means those that have a price when they are done for nothing.
    /// </summary>
    public IReadOnlySet<RepairId>? Parts { get; init; }

    private readonly RememberedPolicy remembered = new(problem, policy);

    /// <summary>Plays one session to its end.</summary>
    /// <exception cref="InvalidOperationException">The policy stops before the unit is repaired.</exception>
    public SessionTally Play() => Play(draws.Next());

    /// <summary>Plays one session on a unit.</summary>
    /// <param name="unit">Any number; the same number is the same unit.</param>
    /// <exception cref="InvalidOperationException">The policy stops before the unit is repaired.</exception>
    public SessionTally Play(ulong unit) =>
        Play(new Draws(unit).NextPlace(problem.Priors), check => unit + (ulong)(check + 1) * Apart);

    /// <summary>Plays one session on a unit that has a fault.</summary>
    /// <remarks>
    /// Each check draws from a number of its own name, so that problems with other checks meet the same unit.
    /// </remarks>
    /// <param name="fault">One of the problem's.</param>
    /// <exception cref="InvalidOperationException">The policy stops before the unit is repaired.</exception>
    internal SessionTally Play(FaultId fault, ulong unit) =>
        Play(PlaceOf(fault), check => unit + StableHash.Of(problem.Checks[check].Id.Value));

    private SessionTally Play(int fault, Func<int, ulong> drawsOf)
    {
        Position here = problem.Begin();
        SessionTally tally = new(0, 0, 0, Mended: false);
        while (true)
        {
            RuledStep chosen = remembered.Choose(problem, here);
            tally = tally
                with { Losses = [.. tally.Losses, .. chosen.Losses],
                    HeldBack = [.. tally.HeldBack, .. chosen.HeldBack] };
            switch (chosen.Step)
            {
                case PlannedStep.DoCheck step:
                    tally = Check(tally, here, step);
                    here = here.Saw(problem.PlaceOf(step.Check), Shown(drawsOf, fault, step),
                        problem.Access.IndexOf(step.Access));
                    break;
                case PlannedStep.DoRepair step:
                    tally = Repair(tally, here, step, fault);
                    if (Cures(step, fault)) return tally;
                    here = here.Failed(step.Repair, step.Access);
                    break;
                default:
                    throw new InvalidOperationException("the policy stops before the unit is repaired");
            }
        }
    }

    private int PlaceOf(FaultId fault)
    {
        for (int place = 0; place < problem.Faults.Length; place++) if (problem.Faults[place].Id == fault) return place;
        throw new ArgumentException($"{fault} is no fault of the problem", nameof(fault));
    }

    private SessionTally Check(SessionTally tally, Position here, PlannedStep.DoCheck step)
    {
        double minutes = problem.Travel[here.State * problem.StateCount + problem.Access.IndexOf(step.Access)]
            + problem.CheckTable.Minutes[problem.PlaceOf(step.Check)];
        return tally
            with { Checks = tally.Checks + 1, Minutes = tally.Minutes + minutes, Priced = tally.Priced + minutes };
    }

    private int Shown(Func<int, ulong> drawsOf, int fault, PlannedStep.DoCheck step)
    {
        int check = problem.PlaceOf(step.Check);
        double[] row = new double[problem.CheckTable.Outcomes(check)];
        for (int outcome = 0; outcome < row.Length; outcome++)
            row[outcome] = problem.CheckTable.Column(check, outcome)[fault];
        return new Draws(drawsOf(check)).NextPlace(row);
    }

    private SessionTally Repair(SessionTally tally, Position here, PlannedStep.DoRepair step, int fault)
    {
        int repair = problem.PlaceOf(step.Repair);
        bool cures = Cures(step, fault), handsOver = step.Repair == RepairId.HandOver;
        double minutes = problem.RepairTable.Price(here.State, repair, problem.Access.IndexOf(step.Access));
        return tally with
        {
            Repairs = tally.Repairs + (handsOver ? 0 : 1),
            PartsInVain = tally.PartsInVain + (!cures && TakesPart(repair) ? 1 : 0),
            Minutes = tally.Minutes + minutes,
            Priced = tally.Priced + minutes + (cures ? 0 : InVain(repair)),
            Mended = cures && !handsOver,
        };
    }

    private bool TakesPart(int repair) =>
        Parts?.Contains(problem.Repairs[repair].Id) ?? problem.RepairTable.Wrong(repair) > 0;

    private bool Cures(PlannedStep.DoRepair step, int fault) =>
        problem.RepairTable.Fixes(problem.PlaceOf(step.Repair)).Contains(fault);

    private double InVain(int repair) => problem.RepairTable.Wrong(repair)
        + (problem.Repairs[repair].Fixes is [var only] && only == FaultId.NoneOfThese ? leftUnfound : 0);
}
