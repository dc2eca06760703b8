using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Clauses;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Knowledge.Search;

/// <summary>Faults by how probable they are: what the wording model says, how well their own words fit, and the symptoms that they explain.</summary>
internal static class FaultRanking
{
    public static ImmutableArray<MatchCandidate> Rank(ImmutableArray<SearchHit> faults, ImmutableArray<MatchCandidate> symptoms,
        ISymptomCauses causes, WholeMessage whole)
    {
        var direct = faults.ToDictionary(hit => hit.Entry.Id, StringComparer.Ordinal);
        var explained = Explained(symptoms, causes);
        var odds = Behind(RuledOut(whole, direct), [.. direct.Keys.Union(explained.Keys).Union(whole.Found.Keys).Order(StringComparer.Ordinal)
            .Select(id => (Id: id, Odds: Odds(direct.GetValueOrDefault(id), explained.GetValueOrDefault(id), causes.WeightOf(id)) + whole.OddsOf(id)))]);
        var best = odds.Select(fault => fault.Odds).DefaultIfEmpty().Max();
        var all = odds.Sum(fault => Math.Exp(fault.Odds - best));
        return
        [
            .. odds.Select(fault => new MatchCandidate(fault.Id, Math.Round(Math.Exp(fault.Odds - best) / all, 6)))
                .Where(candidate => candidate.Score > 0)
                .OrderByDescending(candidate => candidate.Score)
                .ThenBy(candidate => candidate.Id, StringComparer.Ordinal),
        ];
    }

    private static HashSet<string> RuledOut(WholeMessage whole, Dictionary<string, SearchHit> direct) =>
        whole.RuledOut.Where(fault => direct.GetValueOrDefault(fault) is not { Probability: >= MatchThresholds.ToldAllTheSame }).ToHashSet(StringComparer.Ordinal);

    private static double Odds(SearchHit? own, double explained, double weight) =>
        Math.Log(Math.Max(own?.Probability ?? 0, Weights.Floor)) + (Weights.Fit * (own?.Score ?? 0)) + (Weights.Explained * explained) + Favor(weight);

    /// <summary>What a message rules out is not first, if there is anything else, unless the rest of it tells of that and of nothing else.</summary>
    private static ImmutableArray<(string Id, double Odds)> Behind(HashSet<string> ruledOut, ImmutableArray<(string Id, double Odds)> faults)
    {
        if (!faults.Any(fault => !ruledOut.Contains(fault.Id)))
            return faults;
        var most = faults.Where(fault => !ruledOut.Contains(fault.Id)).Max(fault => fault.Odds) - Weights.Behind;
        return [.. faults.Select(fault => ruledOut.Contains(fault.Id) ? (fault.Id, Math.Min(fault.Odds, most)) : fault)];
    }

    /// <summary>Of two faults that fit alike, the more frequent one is likelier meant.</summary>
    private static double Favor(double weight) => MatchThresholds.FavorPerDoubling * Math.Log2(Math.Clamp(weight, 0.25, 8));

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
