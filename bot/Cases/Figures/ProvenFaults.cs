using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.State;

namespace DxAssistant.Cases.Figures;

/// <summary>The faults that a case proved by a repair that cured them.</summary>
public static class ProvenFaults
{
    /// <param name="log">The whole log of the case.</param>
    /// <returns>One a part of the case; empty for a case that is still open or found none.</returns>
    public static ImmutableArray<string> Of(ImmutableArray<StoredEvent> log)
    {
        var state = CaseState.New;
        var proven = ImmutableArray.CreateBuilder<string>();
        foreach (var stored in log)
        {
            if (stored.Event is SecondFaultBegun or StartedOver) proven.AddRange(In(state));
            state = Fold.Apply(state, stored.Event);
        }

        return state.ClosedHow is null ? [] : [.. proven, .. In(state)];
    }

    private static IEnumerable<string> In(CaseState state) =>
        state.Repairs.Where(tried => tried.Proves).Select(tried => tried.Fault);
}
