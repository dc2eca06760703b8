using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Walks;

/// <summary>When everything reads as it should: the checks that are still worth their minutes, then the end.</summary>
/// <remarks>
/// A check can gain no more than the second visit that a fault left unfound costs, times how likely it is to bring that
/// fault to light. Once "none of these" leads, only what gains more than its price is asked; then the walk ends in
/// watching.
/// </remarks>
internal sealed class NothingFound(Library library) : IStepRule
{
    public LaidRule Name => LaidRule.NothingFound;

    public bool GoesBefore => false;

    public IEnumerable<PlannedStep> Instead(WalkScene scene, PlannedStep step)
    {
        if (step is not PlannedStep.DoCheck || scene.ShareOf(FaultId.NoneOfThese) < library.Settings.NoneLeads)
            return [];
        // The plan's own step knows the way between access states: it stands as long as it gains anything.
        (PlanOption Option, double Gain)[] worth =
            [.. scene.Plan.Options.Select(option => (option, Gain(scene, option))).Where(option => option.Item2 > 0)];
        if (worth.Any(option => option.Option.Step == scene.Plan.Step)) return [];
        return worth.Length > 0
            ? worth.OrderByDescending(option => option.Gain).Select(option => option.Option.Step)
            : Watching(scene);
    }

    private IEnumerable<PlannedStep> Watching(WalkScene scene) => scene.Plan.Options.Select(option => option.Step)
        .Where(step => step is PlannedStep.DoRepair repair && IsWatching(library, repair.Repair));

    /// <summary>Whether a repair is none, but advice for what comes and goes.</summary>
    public static bool IsWatching(Library library, RepairId repair) =>
        library.Graph.Find(repair)?.Fixes is [var only] && only == FaultId.NoneOfThese;

    // Minutes saved less minutes spent.
    private double Gain(WalkScene scene, PlanOption option) => option.Step is PlannedStep.DoCheck check
        ? Found(scene, library.Graph.Find(check.Check)!) * library.HandOverMinutes - option.Price
        : 0;

    // How likely it is that a fault is there and the check makes it likelier than "none of these".
    private static double Found(WalkScene scene, Check check)
    {
        double found = 0;
        for (int outcome = 0; outcome < check.Outcomes.Length; outcome++)
        {
            double none = 0, faults = 0, best = 0;
            foreach ((FaultId fault, double share) in scene.Shares)
            {
                double weight = share * check.Row(fault)[outcome];
                if (fault == FaultId.NoneOfThese) none = weight;
                else (faults, best) = (faults + weight, Math.Max(best, weight));
            }

            if (best > none) found += faults;
        }

        return found;
    }
}
