using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph;

/// <summary>The parts of a graph that passed the tests of <see cref="PartsInspection"/>.</summary>
internal sealed record GraphParts(
    ImmutableSortedDictionary<FaultId, Fault> Faults,
    ImmutableSortedDictionary<SymptomId, Symptom> Symptoms,
    ImmutableSortedDictionary<CheckId, Check> Checks,
    ImmutableSortedDictionary<RepairId, Repair> Repairs,
    AccessStates Access);
