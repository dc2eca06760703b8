using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Walks;

/// <summary>An owner who can mend nothing more is asked what helps the technician bring the right part.</summary>
internal sealed class AskForTheNext(Library library) : IStepRule
{
    public LaidRule Name => LaidRule.ForTheNext;

    public bool GoesBefore => true;

    public IEnumerable<PlannedStep> Instead(WalkScene scene, PlannedStep step) =>
        step is PlannedStep.DoRepair repair && repair.Repair == RepairId.HandOver && scene.Who.Rank == 0
        && Triage.Next(scene.Problem, library.Settings.WorthAQuestion, library.Settings.WorthAMinute) is { } check
            ? [check]
            : [];
}
