using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Conversation.Deciding;

/// <summary>What the proof of a fault names and nobody did, for saying what a conclusion rests on.</summary>
internal sealed class ProofDemand(Library library)
{
    /// <summary>
    /// The checks that would prove the likeliest fault a repair cures and that have no result; those that tell none of
    /// the faults in question apart are not asked for, nor those that are not for this unit, person or symptom.
    /// </summary>
    public ImmutableArray<CheckId> NotDone(CaseView view, RepairId repair)
    {
        if (!library.Repairs[repair].DemandsProof || Likeliest(view, repair) is not { } fault) return [];
        ImmutableArray<FaultId> candidates =
            [.. view.Belief.Ranked.Where(ranked => ranked.Probability > 0).Select(ranked => ranked.Id)];
        return
        [
            .. library.Faults[fault].Demanded.Where(check =>
                view.IsFor(library.Checks[check])
                && view.Results.All(result => result.Check != check.Value)
                && library.Graph.Find(check)!.Separates(candidates)),
        ];
    }

    /// <summary>
    /// The likeliest fault that a repair cures; null when it cures none in question, as leaving it to somebody else.
    /// </summary>
    public FaultId? Likeliest(CaseView view, RepairId repair)
    {
        if (library.Graph.Find(repair)?.Fixes is not { } fixes) return null;
        return view.Belief.Ranked.FirstOrDefault(ranked => ranked.Probability > 0 && fixes.Contains(ranked.Id))?.Id;
    }
}
