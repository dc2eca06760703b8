using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Planning.Search;

/// <summary>Reads a plan off a search.</summary>
internal static class PlanReport
{
    // Values closer than this are equal, and the earlier action goes first.
    private const double Tie = 1e-9;

    public static Plan Of(SequencingProblem problem, BoundedSearch search)
    {
        ImmutableArray<PlanOption> ranked = Ranked(problem, search);
        PlannedStep step = ranked.IsEmpty ? new PlannedStep.Nothing() : ranked[0].Step;
        return new Plan(step, search.Upper(search.Root), search.LeastFromRoot(), search.IsExact(search.Root), ranked,
            search.Work);
    }

    /// <summary>What can be done at the root, the best first.</summary>
    public static ImmutableArray<PlanOption> Ranked(SequencingProblem problem, BoundedSearch search)
    {
        List<PlanOption> options = BestAccessOnly(problem, search);
        // A selection sort by "better by more than a tie": a plain sort would let the last bits decide.
        ImmutableArray<PlanOption>.Builder ranked = ImmutableArray.CreateBuilder<PlanOption>(options.Count);
        while (options.Count > 0)
        {
            int best = 0;
            for (int place = 1; place < options.Count; place++)
                if (options[place].Minutes < options[best].Minutes - Tie) best = place;
            ranked.Add(options[best]);
            options.RemoveAt(best);
        }

        return ranked.ToImmutable();
    }

    private static List<PlanOption> BestAccessOnly(SequencingProblem problem, BoundedSearch search)
    {
        List<PlanOption> options = [];
        (int check, int repair) = (-1, -1);
        foreach (SearchAction action in search.RootActions)
        {
            PlanOption option = Option(problem, search, action);
            bool another = action.Check != check || action.Repair != repair;
            (check, repair) = (action.Check, action.Repair);
            if (another) options.Add(option);
            else if (option.Minutes < options[^1].Minutes - Tie) options[^1] = option;
        }

        return options;
    }

    private static PlanOption Option(SequencingProblem problem, BoundedSearch search, in SearchAction action)
    {
        AccessId access = problem.Access.All[action.Access].Id;
        (double lower, double upper) = search.Bounds(action);
        PlannedStep step = action.Check >= 0
            ? new PlannedStep.DoCheck(problem.Checks[action.Check].Id, access)
            : new PlannedStep.DoRepair(problem.Repairs[action.Repair].Id, access);
        return new PlanOption(step, action.Price, upper, lower);
    }
}
