using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search;

/// <summary>Faults by how well they fit: their own words, and the symptoms that they explain.</summary>
internal static class FaultRanking
{
    public static ImmutableArray<MatchCandidate> Rank(ImmutableArray<SearchHit> faults, ImmutableArray<MatchCandidate> symptoms,
        ISymptomCauses causes, IReadOnlySet<string> ruledOut)
    {
        var direct = faults.ToDictionary(hit => hit.Entry.Id, hit => hit.Score, StringComparer.Ordinal);
        var explained = Explained(symptoms, causes);
        return
        [
            .. direct.Keys.Union(explained.Keys)
                .Select(id => new MatchCandidate(id, Math.Round(Math.Min(1, Score(id, direct, explained, ruledOut) * Favor(causes.WeightOf(id))), 6)))
                .Where(candidate => candidate.Score > 0)
                .OrderByDescending(candidate => candidate.Score)
                .ThenBy(candidate => candidate.Id, StringComparer.Ordinal),
        ];
    }

    private static double Score(string id, Dictionary<string, double> direct, Dictionary<string, double> explained, IReadOnlySet<string> ruledOut)
    {
        var own = direct.GetValueOrDefault(id);
        var score = own + ((1 - own) * MatchThresholds.SymptomShare * explained.GetValueOrDefault(id));
        return ruledOut.Contains(id) ? score * MatchThresholds.RuledOutShare : score;
    }

    /// <summary>Of two faults that fit alike, the more frequent one is likelier meant.</summary>
    private static double Favor(double weight) => 1 + (MatchThresholds.FavorPerDoubling * Math.Log2(Math.Clamp(weight, 0.25, 8)));

    /// <summary>For each fault its best symptom: how well that fits, times how likely the fault is behind it against the likeliest.</summary>
    private static Dictionary<string, double> Explained(ImmutableArray<MatchCandidate> symptoms, ISymptomCauses causes)
    {
        var explained = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var symptom in symptoms.Where(symptom => symptom.Score >= MatchThresholds.FaintestSymptom))
        {
            ImmutableArray<SymptomCause> behind = [.. causes.CausesOf(symptom.Id)];
            var likeliest = behind.Select(cause => cause.Probability * cause.Weight).DefaultIfEmpty(1).Max();
            foreach (var cause in behind)
            {
                var fit = symptom.Score * cause.Probability * cause.Weight / likeliest;
                explained[cause.FaultId] = Math.Max(explained.GetValueOrDefault(cause.FaultId), fit);
            }
        }
        return explained;
    }
}
