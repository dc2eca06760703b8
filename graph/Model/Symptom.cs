using System.Collections.Immutable;

namespace DxAssistant.Graph.Model;

/// <summary>What the unit shows or the customer reports.</summary>
/// <param name="Causes">P(this symptom | fault), above 0 and at most 1, for each fault that can cause it.</param>
public sealed record Symptom(SymptomId Id, ImmutableSortedDictionary<FaultId, double> Causes);
