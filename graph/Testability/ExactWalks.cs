using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Planning.Search;

namespace DxAssistant.Graph.Testability;

/// <summary>Goes through everything that can happen when a policy decides the walks.</summary>
/// <param name="problem">One whose objective is a repair.</param>
/// <param name="mostPositions">Past so many positions it gives up.</param>
internal sealed class ExactWalks(SequencingProblem problem, IPolicy policy, int mostPositions)
{
    private readonly PositionIndex index = new(problem);
    private readonly List<Outlook> known = [];

    private bool GaveUp => known.Count > mostPositions;

    /// <summary>The figures; null when there are too many positions.</summary>
    public WalkFigures? Figures()
    {
        Outlook all = From(problem.Begin());
        return GaveUp
            ? null
            : new WalkFigures(
                IsExact: true, known.Count, Estimate.Exactly(all.Checks), Estimate.Exactly(all.Minutes),
                Estimate.Exactly(all.RepairsInVain), Estimate.Exactly(all.PartsInVain),
                Estimate.Exactly(all.HandedOver),
                [Estimate.Exactly(all.MendedBy1), Estimate.Exactly(all.MendedBy2), Estimate.Exactly(all.MendedBy3)]);
    }

    private Outlook From(Position here)
    {
        if (GaveUp) return default;
        if (!index.Add(here, out int number)) return known[number];
        known.Add(default);
        Outlook outlook = GaveUp ? default : policy.Next(problem, here) switch
        {
            PlannedStep.DoCheck step => Through(here, step),
            PlannedStep.DoRepair step => Through(here, step),
            _ => throw new InvalidOperationException("the policy stops before the unit is repaired"),
        };
        return known[number] = outlook;
    }

    private Outlook Through(Position here, PlannedStep.DoCheck step)
    {
        int check = problem.PlaceOf(step.Check), access = problem.Access.IndexOf(step.Access);
        Outlook outlook = new()
        {
            Checks = 1,
            Minutes = problem.Travel[here.State * problem.StateCount + access] + problem.CheckTable.Minutes[check],
        };
        foreach (ForeseenOutcome foreseen in here.Foresee(step.Check, step.Access))
            outlook += foreseen.Probability * From(foreseen.After);
        return outlook;
    }

    private Outlook Through(Position here, PlannedStep.DoRepair step)
    {
        int repair = problem.PlaceOf(step.Repair), access = problem.Access.IndexOf(step.Access);
        bool handsOver = step.Repair == RepairId.HandOver;
        Position after = here.Failed(repair, access);
        double fails = after.WeightSpan.Mass() / here.WeightSpan.Mass(), works = 1 - fails;
        Outlook outlook = new()
        {
            Minutes = problem.RepairTable.Price(here.State, repair, access),
            HandedOver = handsOver ? works : 0,
        };
        if (!handsOver) outlook = outlook with { MendedBy1 = works, MendedBy2 = works, MendedBy3 = works };
        if (!(fails > 0)) return outlook;
        Outlook rest = From(after);
        return outlook + fails * (handsOver ? rest : rest.AfterOneInVain(problem.RepairTable.Wrong(repair) > 0));
    }
}
