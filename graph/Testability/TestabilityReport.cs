using System.Collections.Immutable;

namespace DxAssistant.Graph.Testability;

/// <summary>The figures of a whole graph.</summary>
/// <param name="Seed">The seed of the walks: the same seed gives the same figures.</param>
/// <param name="Symptoms">By id; those that no fault in question shows are left out.</param>
/// <param name="ToldApartByNoCheck">All faults of the graph, whatever the symptom, in groups of two or more.</param>
public sealed record TestabilityReport(
    ulong Seed, ImmutableArray<SymptomFigures> Symptoms, ImmutableArray<AmbiguityGroup> ToldApartByNoCheck)
{
    public OverallFigures Overall => OverallFigures.Of(Symptoms);
}
