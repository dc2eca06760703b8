using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Conversation.Deciding;

/// <summary>Of steps whose plans take nearly the same minutes, the one a technician would rather do.</summary>
/// <remarks>
/// A check before a repair, then the step that leaves the unit as it stands, then the least way, then looking before
/// measuring, then the plan's own order. Expected minutes are not known to the minute, so nothing is lost by it.
/// Nobody asks what is all but known, when a repair takes hardly longer: a fuse is not measured while the wheel is stuck.
/// </remarks>
internal sealed class NearTies(Library library)
{
    // Common practice, no source: closer than this nobody can tell two plans apart.
    private const double Minutes = 1, Share = 0.01;

    // An answer this likely is all but known; what a repair may take longer for not asking it. Common practice, no source.
    private const double Foregone = 0.95, Hardly = 0.05;

    /// <summary>The step to do: the plan's, or one within the margin of it.</summary>
    public PlannedStep Best(CaseView view, Plan plan)
    {
        // The margin is for choosing between checks; whether to repair or hand over is the plan's to say.
        if (plan.Step is not PlannedStep.DoCheck) return plan.Step;
        double most = plan.Options[0].Minutes + Math.Max(Minutes, Share * plan.Options[0].Minutes);
        PlannedStep.DoCheck best = plan.Options.Where(option => option.Minutes <= most).Select(option => option.Step)
            .OfType<PlannedStep.DoCheck>().MinBy(check => Trouble(view, check))!;
        return IsForegone(view, best) && Repair(plan) is { } repair ? repair : best;
    }

    private bool IsForegone(CaseView view, PlannedStep.DoCheck step) =>
        view.Belief.Foresee(library.Graph.Find(step.Check)!).Max(seen => seen.Probability) >= Foregone;

    // The best repair of a fault that changes no part, when it takes hardly longer than the plan.
    private PlannedStep.DoRepair? Repair(Plan plan) => plan.Options
        .Where(option => option.Minutes <= (1 + Hardly) * plan.Options[0].Minutes)
        .Select(option => option.Step).OfType<PlannedStep.DoRepair>()
        .FirstOrDefault(step => library.Repairs.TryGetValue(step.Repair, out var page) && page.Parts.IsEmpty
            && library.Graph.Find(step.Repair)!.Fixes.Any(fault => fault != FaultId.NoneOfThese));

    private (double Way, bool Measures) Trouble(CaseView view, PlannedStep.DoCheck check) =>
        (library.Graph.Access.Minutes(view.Access, check.Access), library.Checks[check.Check].Calculation is not null);
}
