using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>A failed part or a site condition.</summary>
/// <param name="Part">The part that failed; null when the site is to blame.</param>
/// <param name="Series">The series that can have it; empty means all.</param>
/// <param name="Demanded">The checks that the proof links to: no part is changed before they are done.</param>
public sealed record FaultPage(
    FaultId Id,
    Passage Title,
    Passage Summary,
    string? Part,
    ImmutableSortedSet<string> Series,
    ImmutableArray<Passage> SaidAs,
    ImmutableArray<Passage> Seen,
    ImmutableArray<Passage> Measured,
    ImmutableArray<LooksTheSame> LooksTheSame,
    Passage Proof,
    ImmutableArray<CheckId> Demanded,
    ImmutableArray<Passage> Beware,
    Passage Warranty)
{
    /// <summary>The checks a warranty claim has to show: those of the proof, then those that the warranty words link
    /// to.</summary>
    public ImmutableArray<CheckId> ClaimDemands { get; init; } = Demanded;

    /// <summary>The repairs that may leave it behind when they are made.</summary>
    public ImmutableSortedSet<RepairId> LeftBy { get; init; } = [];

    /// <summary>The fault whose words are also told of this one: checks tell the two apart, words do not.</summary>
    public FaultId? VarietyOf { get; init; }

    /// <summary>True when it may set fire to something: an owner is never told to watch it.</summary>
    public bool CanBurn { get; init; }
}
