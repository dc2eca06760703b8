using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Conversation.Deciding;

/// <summary>Before a part is changed, the checks that the fault's proof names are done, as far as they can be.</summary>
internal sealed class ProofDemand(Library library)
{
    /// <summary>The first such check that can still be done here; null when none is left, or the repair takes no part.</summary>
    public StepChosen? Before(CaseView view, RepairId repair)
    {
        foreach (CheckId id in NotDone(view, repair))
            if (Reachable(view, library.Graph.Find(id)!) is { } access)
                return new StepChosen(StepKind.Check, id.Value, access.Value);
        return null;
    }

    /// <summary>
    /// The checks that would prove the likeliest fault a repair cures and that have no result; those that tell none of
    /// the faults in question apart are not asked for.
    /// </summary>
    public ImmutableArray<CheckId> NotDone(CaseView view, RepairId repair)
    {
        if (library.Repairs[repair].Parts.IsEmpty || Likeliest(view, repair) is not { } fault) return [];
        ImmutableArray<FaultId> candidates = [.. view.Belief.Ranked.Where(ranked => ranked.Probability > 0).Select(ranked => ranked.Id)];
        return
        [
            .. library.Faults[fault].Demanded.Where(check =>
                view.AppliesHere(library.Checks[check].Series)
                && view.Results.All(result => result.Check != check.Value)
                && library.Graph.Find(check)!.Separates(candidates)),
        ];
    }

    /// <summary>The likeliest fault that a repair cures; null when it cures none in question, as leaving it to somebody else.</summary>
    public FaultId? Likeliest(CaseView view, RepairId repair)
    {
        if (library.Graph.Find(repair)?.Fixes is not { } fixes) return null;
        return view.Belief.Ranked.FirstOrDefault(ranked => ranked.Probability > 0 && fixes.Contains(ranked.Id))?.Id;
    }

    // The nearest access state in which this person may do it; null when there is none, or it was passed over.
    private static AccessId? Reachable(CaseView view, Check check)
    {
        if (view.State.PassedOver.ContainsKey(check.Id.Value) || !view.Role.May(check.Who)) return null;
        AccessStates open = view.OpenAccess;
        return check.Access.Where(open.Contains)
            .OrderBy(access => open.Minutes(view.Access, access)).Select(access => (AccessId?)access).FirstOrDefault();
    }
}
