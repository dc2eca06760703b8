using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Testability;

/// <summary>Faults that no check tells apart (IEEE 1522, ambiguity group; from memory).</summary>
/// <param name="Faults">By id; one fault alone is a group, too.</param>
/// <param name="Repairs">
/// The fewest repairs found that cure all of them, by id; empty when one of them has none.
/// </param>
/// <param name="Probability">Of all its faults together, 0 to 1.</param>
public sealed record AmbiguityGroup(
    ImmutableArray<FaultId> Faults, ImmutableArray<RepairId> Repairs, double Probability);
