using DxAssistant.Conversation.Events;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Conversation.Deciding;

/// <summary>When everything reads as it should: the checks that are still worth their minutes, then the end.</summary>
/// <remarks>
/// A check can gain no more than the second visit that a fault left unfound costs, times how likely it is to bring that
/// fault to light. Once "none of these" leads, only what gains more than its price is asked; then the walk ends in watching.
/// </remarks>
/// <param name="secondVisit">What a second visit costs, minutes.</param>
internal sealed class NothingFound(Library library, double secondVisit)
{
    // The probability of "none of these" from which it leads; common practice, no source.
    private const double Leads = 0.5;

    /// <summary>What to do instead of the plan's step: the check that gains most, or the end in watching; null to follow the plan.</summary>
    public StepChosen? Next(CaseView view, Plan plan)
    {
        if (view.Belief.ProbabilityOf(FaultId.NoneOfThese) < Leads) return null;
        // The plan's own step knows the way between access states: it stands as long as it gains anything.
        if (plan.Options.FirstOrDefault(option => option.Step == plan.Step) is { } own && Gain(view.Belief, own) > 0) return null;
        (PlanOption? best, double most) = (null, 0);
        foreach (PlanOption option in plan.Options)
            if (Gain(view.Belief, option) is var gain && gain > most) (best, most) = (option, gain);
        return best?.Step is PlannedStep.DoCheck check
            ? new StepChosen(StepKind.Check, check.Check.Value, check.Access.Value)
            : Watching(plan);
    }

    private StepChosen? Watching(Plan plan) => plan.Options.Select(option => option.Step).OfType<PlannedStep.DoRepair>()
        .Where(repair => library.Graph.Find(repair.Repair)?.Fixes is [var only] && only == FaultId.NoneOfThese)
        .Select(repair => new StepChosen(StepKind.Repair, repair.Repair.Value, repair.Access.Value)).FirstOrDefault();

    // Minutes saved less minutes spent.
    private double Gain(Belief belief, PlanOption option) => option.Step is PlannedStep.DoCheck check
        ? Found(belief, library.Graph.Find(check.Check)!) * secondVisit - option.Price
        : 0;

    // How likely it is that a fault is there and the check makes it likelier than "none of these".
    private static double Found(Belief belief, Check check)
    {
        double found = 0;
        for (int outcome = 0; outcome < check.Outcomes.Length; outcome++)
        {
            double none = 0, faults = 0, best = 0;
            foreach (RankedFault ranked in belief.Ranked)
            {
                double weight = ranked.Probability * check.Row(ranked.Id)[outcome];
                if (ranked.Id == FaultId.NoneOfThese) none = weight;
                else (faults, best) = (faults + weight, Math.Max(best, weight));
            }

            if (best > none) found += faults;
        }

        return found;
    }
}
