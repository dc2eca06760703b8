using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Walks;

/// <summary>
/// Before a part is changed, the checks that the proof of the likeliest fault names are done, as far as they can be.
/// What is as good as found is proven at once: no check that only makes it a little surer is asked before.
/// </summary>
internal sealed class ProofBeforePart(Library library) : IStepRule
{
    public LaidRule Name => LaidRule.Proof;

    public bool GoesBefore => true;

    /// <summary>No compressor and no board is changed on a guess, however long its proof takes.</summary>
    public double Worth(PlannedStep step) =>
        step is PlannedStep.DoRepair repair && library.Repairs.TryGetValue(repair.Repair, out var page)
            && page.ProofAlways ? double.MaxValue : 0;

    public IEnumerable<PlannedStep> Instead(WalkScene scene, PlannedStep step)
    {
        FaultId? fault = step is PlannedStep.DoRepair repair ? OfAPart(scene, repair.Repair) : Found(scene);
        ImmutableArray<CheckId> demanded = fault is { } known ? library.Faults[known].Demanded : [];
        return step is PlannedStep.DoCheck own && demanded.Contains(own.Check)
            ? []
            : demanded.Select(id => scene.Open(id)).OfType<Check>()
                .Select(check => new PlannedStep.DoCheck(check.Id, scene.Nearest(check)));
    }

    // What is to be proven before the repair; null when it takes no part and its page does not ask for the proof.
    private FaultId? OfAPart(WalkScene scene, RepairId repair) =>
        library.Repairs.TryGetValue(repair, out var page) && page.DemandsProof ? scene.Likeliest(repair) : null;

    // The fault that counts as found; null when none does.
    private FaultId? Found(WalkScene scene) => scene.Shares
        .Where(fault => fault.Key != FaultId.NoneOfThese && fault.Value >= library.Settings.Found)
        .Select(fault => (FaultId?)fault.Key).FirstOrDefault();
}
