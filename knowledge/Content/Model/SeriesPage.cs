using System.Collections.Immutable;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>A product line with its ratings, terminals and display codes.</summary>
/// <param name="Display"><c>two digits</c>, <c>lamps</c> or <c>none</c>.</param>
/// <param name="Coverage">The id of its terms of coverage.</param>
/// <param name="Serial">The pattern of its serial numbers; null when it has none.</param>
public sealed record SeriesPage(
    string Id,
    Passage Title,
    Passage Summary,
    string Display,
    Market Market,
    string? Serial,
    ImmutableArray<Passage> SaidAs,
    ImmutableSortedDictionary<string, Rating> Ratings,
    ImmutableArray<Terminal> Terminals,
    ImmutableArray<DisplayCode> Codes,
    string Coverage)
{
    /// <summary>A serial number that fits the pattern; null when there is no pattern.</summary>
    public string? SerialExample { get; init; }
}
