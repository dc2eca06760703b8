using System.Collections.Immutable;
using DxAssistant.Conversation.State;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Conversation;

/// <summary>How the faults stand in a case, for what is built from it.</summary>
public static class Standing
{
    /// <summary>How likely a fault is by the evidence of a case, 0 to 1.</summary>
    public static double BeliefIn(Library library, CaseState state, FaultId fault) => state.Symptoms.IsEmpty
        ? 0
        : new CaseView(library, state).Belief.Ranked.FirstOrDefault(ranked => ranked.Id == fault)?.Probability ?? 0;

    /// <summary>
    /// The faults that are likely enough to be named, likeliest first, "none of these" among them; at least the
    /// likeliest.
    /// </summary>
    public static ImmutableArray<RankedFault> Possible(Library library, CaseState state)
    {
        if (state.Symptoms.IsEmpty) return [];
        ImmutableArray<RankedFault> ranked = new CaseView(library, state).Belief.Ranked;
        return [.. ranked.Where((fault, place) => place == 0 || fault.Probability >= library.Settings.Suspected)];
    }

    /// <summary>The likeliest fault of a case; null while no symptom is known.</summary>
    public static FaultId? Likeliest(Library library, CaseState state) =>
        state.Symptoms.IsEmpty ? null : new CaseView(library, state).Belief.Ranked.FirstOrDefault()?.Id;
}
