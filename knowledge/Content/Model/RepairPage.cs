using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>What cures one or more faults.</summary>
/// <param name="SaidAs">What people say who have made the repair already.</param>
/// <param name="Verify">The question that a working unit answers with yes.</param>
public sealed record RepairPage(
    RepairId Id,
    Passage Title,
    ImmutableArray<Passage> Steps,
    ImmutableArray<Passage> SaidAs,
    Passage Verify,
    ImmutableArray<string> Parts,
    ImmutableArray<CautionPage> Cautions)
{
    /// <summary>
    /// The checks whose results from before speak of the unit no longer once this was done and did not cure; empty for
    /// most.
    /// </summary>
    public ImmutableSortedSet<CheckId> Changes { get; init; } = [];

    /// <summary>Whether it may be the right work and still not cure: a second leak, a wrong weight.</summary>
    public bool MayNotHold { get; init; }

    /// <summary>
    /// Whether its part is too dear to be changed before the proof of its fault, however long that takes.
    /// </summary>
    public bool ProofAlways { get; init; }

    /// <summary>
    /// Whether the proof of the fault comes before it at all: where it takes a part, or its page says so.
    /// </summary>
    public bool DemandsProof => ProofAlways || !Parts.IsEmpty;

    /// <summary>
    /// The checks without whose sound results the unit is not switched on after the work; empty for most.
    /// </summary>
    public ImmutableArray<CheckId> BeforeTrial { get; init; } = [];

    /// <summary>
    /// Whether an owner may try it though nobody looked for its fault: it can hurt nobody and costs nothing.
    /// </summary>
    public bool MayBeUnseen { get; init; }

    /// <summary>
    /// Whether it is the work of another trade: the person arranges it, the case ends with that, and nothing is
    /// switched on.
    /// </summary>
    public bool LeftToOthers { get; init; }

    /// <summary>
    /// The access state in which the unit is tried out afterwards, where its trial measures something; null where every
    /// repair is.
    /// </summary>
    public AccessId? VerifyIn { get; init; }
}
