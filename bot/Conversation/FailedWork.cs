using DxAssistant.Conversation.State;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Conversation;

/// <summary>What a repair says that was done and did not cure.</summary>
public static class FailedWork
{
    /// <summary>
    /// It rules its faults out; where it is of a kind that may not hold, it makes them less likely with each time it
    /// was done.
    /// </summary>
    /// <exception cref="KeyNotFoundException">The content has no such repair.</exception>
    public static Evidence.RepairFailed Says(Library library, CaseState state, RepairId repair)
    {
        int times = state.Repairs.Count(tried => !tried.Works && tried.Repair == repair.Value);
        return new Evidence.RepairFailed(repair,
            library.Repairs[repair].MayNotHold ? Math.Pow(library.Settings.NotHeld, times) : 0);
    }
}
