using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Knowledge.Content.Building;

/// <summary>What a fault graph is made of.</summary>
internal sealed record GraphNodes(
    ImmutableSortedDictionary<FaultId, Fault> Faults,
    ImmutableSortedDictionary<SymptomId, Symptom> Symptoms,
    ImmutableSortedDictionary<CheckId, Check> Checks,
    ImmutableSortedDictionary<RepairId, Repair> Repairs,
    AccessStates Access);
