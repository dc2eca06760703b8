using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Walks;

/// <summary>Before a part is changed, the checks that the proof of the likeliest fault names are done, as far as they can be.</summary>
internal sealed class ProofBeforePart(Library library) : IStepRule
{
    public LaidRule Name => LaidRule.Proof;

    public bool GoesBefore => true;

    public IEnumerable<PlannedStep> Instead(WalkScene scene, PlannedStep step) =>
        step is PlannedStep.DoRepair repair && Fault(scene, repair.Repair) is { } fault
            ? library.Faults[fault].Demanded.Select(id => scene.Open(id)).OfType<Check>()
                .Select(check => new PlannedStep.DoCheck(check.Id, scene.Nearest(check)))
            : [];

    // What is to be proven before the repair; null when it takes no part.
    private FaultId? Fault(WalkScene scene, RepairId repair) =>
        library.Repairs.TryGetValue(repair, out var page) && !page.Parts.IsEmpty ? scene.Likeliest(repair) : null;
}
