using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Walks;

/// <summary>Of checks whose plans take nearly the same minutes, the one a technician would rather do.</summary>
/// <remarks>
/// The one that leaves the unit as it stands, then the least way, then looking before measuring, then the plan's own
/// order. Expected minutes are not known to the minute, so nothing is lost by it. Whether to repair or hand over is the
/// plan's to say. A check that tells nothing takes its own minutes more than the plan, and may lie within the margin by
/// being short: one that does not earn half of them is no tie, but an idle question.
/// </remarks>
internal sealed class NearTies(Library library) : IStepRule
{
    private const double Earned = 0.5;

    public LaidRule Name => LaidRule.NearTie;

    public bool GoesBefore => false;

    public IEnumerable<PlannedStep> Instead(WalkScene scene, PlannedStep step) => step is not PlannedStep.DoCheck
        ? []
        : scene.Plan.Options.Select(option => option.Step).OfType<PlannedStep.DoCheck>()
            .Where(check => check == step || IsWorthIt(scene, step, check)).OrderBy(check => Trouble(scene, check));

    private static bool IsWorthIt(WalkScene scene, PlannedStep own, PlannedStep.DoCheck check) =>
        scene.Extra(own, check) <= (1 - Earned) * scene.MinutesOf(check.Check);

    private (double Way, bool Measures) Trouble(WalkScene scene, PlannedStep.DoCheck check) =>
        (scene.Problem.Access.Minutes(scene.Here, check.Access), library.Checks[check.Check].Calculation is not null);
}
