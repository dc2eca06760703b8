using DxAssistant.Conversation.State;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Conversation;

/// <summary>What the repairs of a case say about the fault that is left.</summary>
public static class DoneWork
{
    /// <summary>
    /// In the order they were made; one after which the unit worked says nothing of what is left, nor does one that the
    /// content no longer holds.
    /// </summary>
    public static IEnumerable<Evidence> Says(Library library, CaseState state) =>
        from tried in state.Repairs
        let repair = new RepairId(tried.Repair)
        where !tried.Works && library.Graph.Find(repair) is not null
        let failed = FailedWork.Says(library, state, repair)
        select tried.Beside is null ? failed : (Evidence)new Evidence.FaultMended(repair, failed.NotHeld);
}
