using System.Collections.Immutable;
using DxAssistant.Conversation.State;
using DxAssistant.Graph;

namespace DxAssistant.Conversation;

/// <summary>Beliefs kept in mind: most messages teach nothing new about the faults.</summary>
internal sealed class KnownBeliefs
{
    // Some tens of kilobytes each.
    private const int Most = 512;

    private readonly Remembered<Evidence, Belief> known = new(Most);

    /// <summary>The belief in a state of which everything that counts is the same, or the one reckoned now.</summary>
    public Belief Of(CaseState state, Func<Belief> reckon) =>
        known.Of(new Evidence(state.Symptoms, state.Results, state.Repairs, state.Earlier, state.Series), reckon)!;

    // Arrays are equal when they are one and the same: states share them until something is learnt.
    private readonly record struct Evidence(
        ImmutableArray<ReportedSymptom> Symptoms, ImmutableArray<SeenResult> Results,
        ImmutableArray<TriedRepair> Repairs,
        ImmutableArray<EarlierWork> Earlier, string? Series);
}
