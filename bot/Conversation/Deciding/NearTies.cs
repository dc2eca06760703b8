using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Conversation.Deciding;

/// <summary>Of steps whose plans take nearly the same minutes, the one a technician would rather do.</summary>
/// <remarks>
/// A check before a repair, then the step that leaves the unit as it stands, then the least way, then looking before
/// measuring, then the plan's own order. Expected minutes are not known to the minute, so nothing is lost by it.
/// </remarks>
internal sealed class NearTies(Library library)
{
    // Common practice, no source: closer than this nobody can tell two plans apart.
    private const double Minutes = 1, Share = 0.01;

    /// <summary>The step to do: the plan's, or one within the margin of it.</summary>
    public PlannedStep Best(CaseView view, Plan plan)
    {
        // The margin is for choosing between checks; whether to repair or hand over is the plan's to say.
        if (plan.Step is not PlannedStep.DoCheck) return plan.Step;
        double most = plan.Options[0].Minutes + Math.Max(Minutes, Share * plan.Options[0].Minutes);
        return plan.Options.Where(option => option.Minutes <= most).Select(option => option.Step)
            .OfType<PlannedStep.DoCheck>().MinBy(check => Trouble(view, check))!;
    }

    private (double Way, bool Measures) Trouble(CaseView view, PlannedStep.DoCheck check) =>
        (library.Graph.Access.Minutes(view.Access, check.Access), library.Checks[check.Check].Calculation is not null);
}
