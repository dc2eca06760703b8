using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Walks;

/// <summary>Of checks whose plans take nearly the same minutes, the one a technician would rather do.</summary>
/// <remarks>
/// The one that leaves the unit as it stands, then the least way, then looking before measuring, then the plan's own order.
/// Expected minutes are not known to the minute, so nothing is lost by it. Whether to repair or hand over is the plan's to say.
/// </remarks>
internal sealed class NearTies(Library library) : IStepRule
{
    public LaidRule Name => LaidRule.NearTie;

    public bool GoesBefore => false;

    public IEnumerable<PlannedStep> Instead(WalkScene scene, PlannedStep step) => step is not PlannedStep.DoCheck
        ? []
        : scene.Plan.Options.Select(option => option.Step).OfType<PlannedStep.DoCheck>().OrderBy(check => Trouble(scene, check));

    private (double Way, bool Measures) Trouble(WalkScene scene, PlannedStep.DoCheck check) =>
        (scene.Problem.Access.Minutes(scene.Here, check.Access), library.Checks[check.Check].Calculation is not null);
}
