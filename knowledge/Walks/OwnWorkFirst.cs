using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Walks;

/// <summary>
/// Before a case is left to somebody else, what this person can put right without a part is put right: a filter is
/// washed though it looked clean, before a visit is booked for want of air.
/// </summary>
internal sealed class OwnWorkFirst(Library library) : IStepRule
{
    public LaidRule Name => LaidRule.OwnWork;

    public bool GoesBefore => false;

    public IEnumerable<PlannedStep> Instead(WalkScene scene, PlannedStep step) => IsVisit(step)
        ? scene.Plan.Options.Where(option => option.Step is PlannedStep.DoRepair repair && IsOwnWork(scene, repair))
            .OrderBy(option => option.Minutes).Select(option => option.Step)
        : [];

    private static bool IsVisit(PlannedStep step) =>
        step is PlannedStep.DoRepair repair && repair.Repair == RepairId.HandOver;

    private bool IsOwnWork(WalkScene scene, PlannedStep.DoRepair step) =>
        library.Repairs.TryGetValue(step.Repair, out var page) && page is { Parts.IsEmpty: true, LeftToOthers: false }
        && !NothingFound.IsWatching(library, step.Repair)
        && library.Graph.Find(step.Repair)!.Fixes.Sum(scene.ShareOf) >= library.Settings.TriedFirst;
}
