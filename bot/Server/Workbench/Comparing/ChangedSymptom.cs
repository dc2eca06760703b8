using System.Collections.Immutable;
using DxAssistant.Graph.Testability;

namespace DxAssistant.Server.Workbench.Comparing;

/// <summary>A symptom of a series whose walks the edit can have changed.</summary>
/// <param name="Before">Its figures on the old pages; null when it was not there or had no fault of the series.</param>
/// <param name="After">Its figures on the new pages; null likewise.</param>
/// <param name="Walks">The walks that changed.</param>
internal sealed record ChangedSymptom(
    string Series, string Symptom, SymptomFigures? Before, SymptomFigures? After, ImmutableArray<ChangedWalk> Walks)
{
    /// <summary>Both sides on the same units; null when both are exact, or only one is there.</summary>
    public PairedWalks? Played { get; init; }
}
