using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Testability;
using DxAssistant.Graph.Tests.Planning;

namespace DxAssistant.Graph.Tests.Testability;

public sealed class PairedWalksTests
{
    private const int Walks = 400;

    // Nothing changed: whatever the units are, there is no difference and no doubt about it.
    [Fact]
    public void Play_SameProblemTwice_DiffersByNothing()
    {
        SequencingProblem problem = new RandomProblems(5).Repairing(6, 8, 2, perfect: 0);
        PairedWalks played = Play(problem, problem);
        Assert.Equal(played.Before, played.After with { IsolatedTo = played.Before.IsolatedTo });
        Assert.Equal((Estimate.Exactly(0), Estimate.Exactly(0), Estimate.Exactly(0)),
            (played.Minutes, played.RepairsInVain, played.MendedFirst));
    }

    // A check more shifts the places of the others; the units stay the same, so that a longer check costs its minutes
    // and no more.
    [Fact]
    public void Play_CheckThatNobodyAsksMore_ChangesNoUnit()
    {
        SequencingProblem problem = new RandomProblems(5).Repairing(6, 8, 2, perfect: 0);
        Check idle = problem.Checks[0] with { Id = new CheckId("aaa"), Minutes = 10_000 };
        SequencingProblem more =
            new(problem.Objective, problem.Faults, problem.Checks.Prepend(idle), problem.Repairs, problem.Access);
        Assert.Equal(Estimate.Exactly(0), Play(problem, more).RepairsInVain);
    }

    // Played by themselves the two sides leave far more open than their difference.
    [Fact]
    public void Play_RepairsLongerByAMinute_AreNarrowerThanEachSide()
    {
        SequencingProblem problem = new RandomProblems(5).Repairing(6, 8, 2, perfect: 0);
        SequencingProblem longer = new(problem.Objective, problem.Faults, problem.Checks,
            problem.Repairs.Select(repair => repair with { Minutes = repair.Minutes + 1 }), problem.Access);
        PairedWalks played = Play(problem, longer);
        Assert.InRange(played.Minutes.Value, 1, 6); // a minute for each repair tried
        Assert.True(played.Minutes.HalfWidth < played.Before.Minutes.HalfWidth / 5,
            $"{played.Minutes} against {played.Before.Minutes}");
    }

    // Source: the definition of a coupling: each side alone is drawn by its own priors. 5 standard errors of a share.
    [Fact]
    public void Next_OtherPriors_DrawsEachSideByItsOwn()
    {
        SequencingProblem before = Problem(("a", 1), ("b", 3)), after = Problem(("a", 2), ("b", 1), ("c", 1));
        var units = new SharedUnits(before, after);
        var draws = new Draws(1);
        (FaultId Before, FaultId After)[] all = [.. Enumerable.Range(0, 20_000).Select(_ => units.Next(draws))];
        double error = 5 * Math.Sqrt(0.25 / all.Length);
        Assert.InRange(all.Count(unit => unit.Before.Value == "b") / (double)all.Length, 0.75 - error, 0.75 + error);
        Assert.InRange(all.Count(unit => unit.After.Value == "a") / (double)all.Length, 0.5 - error, 0.5 + error);
        Assert.InRange(all.Count(unit => unit.Before == unit.After) / (double)all.Length, 0.5 - error, 0.5
            + error); // 0.25 and 0.25 shared
    }

    private static PairedWalks Play(SequencingProblem before, SequencingProblem after) =>
        PairedWalks.Play((before, new InOrder()), (after, new InOrder()), Walks, seed: 1);

    private static SequencingProblem Problem(params (string Id, double Weight)[] faults) => new(
        Objective.Repair, faults.Select(fault => Parts.Fault(fault.Id) with { Weight = fault.Weight }), [],
        [Parts.Repair("all", 1, [.. faults.Select(fault => fault.Id)])], AccessStates.OnlyOne);

    // Every check but the idle one in its order, then what cures a fault that is left.
    private sealed class InOrder : IPolicy
    {
        public PlannedStep Next(SequencingProblem problem, Position here) =>
            problem.Checks.FirstOrDefault(check => check.Id.Value != "aaa" && !here.IsUsed(check.Id)) is { } check
                ? new PlannedStep.DoCheck(check.Id, check.Access[0])
                : problem.Repairs.Where(repair => repair.Fixes.Any(fault => here.ProbabilityOf(fault) > 0))
                    .Select(repair => new PlannedStep.DoRepair(repair.Id, repair.Access[0])).First();
    }
}
