using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search;

/// <summary>Symptoms by how well they fit: the closest wordings, drawn towards what the wording model holds probable.</summary>
internal static class SymptomRanking
{
    /// <summary>The same symptoms with their scores, best first; ties by id.</summary>
    public static ImmutableArray<SearchHit> Rank(ImmutableArray<SearchHit> symptoms) =>
    [
        .. symptoms.Select(hit => hit with { Score = Math.Round(Score(hit), 9) })
            .OrderByDescending(hit => hit.Score).ThenBy(hit => hit.Entry.Id, StringComparer.Ordinal),
    ];

    /// <summary>The share of the model; set on the development phrases.</summary>
    private const double Judged = 0.35;

    // What was said in the very words of a page stays with that page.
    private static double Score(SearchHit hit) =>
        hit.Score >= Weights.Own ? hit.Score : ((1 - Judged) * hit.Score) + (Judged * hit.Probability);
}
