using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Knowledge.Search;

/// <summary>
/// Symptoms by how well they fit: the closest wordings, drawn towards what the wording model holds probable.
/// </summary>
internal static class SymptomRanking
{
    /// <summary>The share of the model; set on the development phrases.</summary>
    private const double Judged = 0.35;

    /// <summary>
    /// Pages whose own words fit alike, within this much, are put in order by the model, and not told apart by it.
    /// </summary>
    private const double Alike = 0.06;

    /// <summary>
    /// How far apart the scores of such pages may stand: less than a symptom must lead by to be taken without asking
    /// back.
    /// </summary>
    private const double LeastApart = 0.1;

    /// <summary>The same symptoms with their scores, best first; ties by id.</summary>
    public static ImmutableArray<SearchHit> Rank(ImmutableArray<SearchHit> symptoms)
    {
        if (symptoms.IsEmpty)
            return symptoms;
        ImmutableArray<(SearchHit Hit, double Score)> scored = [.. symptoms.Select(hit => (hit, Score(hit)))];
        var best = scored.MaxBy(pair => pair.Score);
        return
        [
            .. scored.Select(pair => pair.Hit with { Score = Math.Round(Kept(pair, best), 9) })
                .OrderByDescending(hit => hit.Score).ThenBy(hit => hit.Entry.Id, StringComparer.Ordinal),
        ];
    }

    private static double Kept((SearchHit Hit, double Score) pair, (SearchHit Hit, double Score) best) =>
        pair.Hit.Score >= best.Hit.Score - Alike ? Math.Max(pair.Score, best.Score - LeastApart) : pair.Score;

    // What was said in the very words of a page stays with that page.
    private static double Score(SearchHit hit) =>
        hit.Score >= Weights.Own ? hit.Score : ((1 - Judged) * hit.Score) + (Judged * hit.Probability);
}
