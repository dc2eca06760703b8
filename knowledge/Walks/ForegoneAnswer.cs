using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Walks;

/// <summary>
/// Nobody asks what is all but known when a repair that takes no part takes hardly longer: a fuse is not measured while
/// the wheel is stuck.
/// </summary>
internal sealed class ForegoneAnswer(Library library) : IStepRule
{
    public LaidRule Name => LaidRule.Foregone;

    public bool GoesBefore => false;

    public IEnumerable<PlannedStep> Instead(WalkScene scene, PlannedStep step) =>
        step is PlannedStep.DoCheck check && IsForegone(scene, check)
            ? scene.Plan.Options.Select(option => option.Step).OfType<PlannedStep.DoRepair>()
                .Where(IsOfAFaultWithoutPart)
            : [];

    private bool IsForegone(WalkScene scene, PlannedStep.DoCheck step) =>
        scene.Problem.Begin().Foresee(step.Check, step.Access)
            .Max(seen => seen.Probability) >= library.Settings.Foregone;

    private bool IsOfAFaultWithoutPart(PlannedStep.DoRepair step) =>
        library.Repairs.TryGetValue(step.Repair, out var page) && page.Parts.IsEmpty
        && library.Graph.Find(step.Repair)!.Fixes.Any(fault => fault != FaultId.NoneOfThese);
}
