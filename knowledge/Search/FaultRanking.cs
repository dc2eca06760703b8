using System.Collections.Immutable;
using System.Runtime.InteropServices;
using DxAssistant.Knowledge.Search.Clauses;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Knowledge.Search;

/// <summary>
/// Faults by how probable they are: what the wording model says, how well their own words fit, and the symptoms that
/// they explain.
/// </summary>
internal static class FaultRanking
{
    public static ImmutableArray<MatchCandidate> Rank(ImmutableArray<SearchHit> faults,
        ImmutableArray<MatchCandidate> symptoms,
        ISymptomCauses causes, WholeMessage whole)
    {
        var odds = OddsOfAll(faults, symptoms, causes, whole);
        KeepBehind(whole.RuledOut, CollectionsMarshal.AsSpan(odds));
        var best = odds.Select(fault => fault.Odds).DefaultIfEmpty().Max();
        var all = odds.Sum(fault => Math.Exp(fault.Odds - best));
        var candidates = new List<MatchCandidate>();
        foreach (var fault in odds)
        {
            if (Math.Round(Math.Exp(fault.Odds - best) / all, 6) is > 0 and var score)
                candidates.Add(new MatchCandidate(fault.Id, score));
        }
        candidates.Sort(BestFirst);
        return [.. candidates];
    }

    private static int BestFirst(MatchCandidate one, MatchCandidate other) =>
        one.Score != other.Score ? other.Score.CompareTo(one.Score) : string.CompareOrdinal(one.Id, other.Id);

    /// <summary>
    /// The log odds of every fault that anything speaks for: those that fit in the order given, then the others by id.
    /// </summary>
    private static List<(string Id, double Odds)> OddsOfAll(ImmutableArray<SearchHit> faults,
        ImmutableArray<MatchCandidate> symptoms,
        ISymptomCauses causes, WholeMessage whole)
    {
        var others = Explained(symptoms, causes);
        foreach (var id in whole.Found.Keys)
            others.TryAdd(id, 0);
        var odds = new List<(string Id, double Odds)>(faults.Length + others.Count);
        foreach (var hit in faults)
        {
            others.Remove(hit.Entry.Id, out var explained);
            odds.Add((hit.Entry.Id, Odds(hit, explained, causes.WeightOf(hit.Entry.Id)) + whole.OddsOf(hit.Entry.Id)));
        }
        foreach (var (id, explained) in others.OrderBy(other => other.Key, StringComparer.Ordinal))
            odds.Add((id, Odds(null, explained, causes.WeightOf(id)) + whole.OddsOf(id)));
        return odds;
    }

    private static double Odds(SearchHit? own, double explained, double weight) =>
        Math.Log(Math.Max(own?.Probability ?? 0, Weights.Floor)) + (Weights.Fit * (own?.Score ?? 0))
            + (Weights.Explained * explained) + Favor(weight);

    /// <summary>What a message rules out is never first, if there is anything else.</summary>
    private static void KeepBehind(IReadOnlySet<string> ruledOut, Span<(string Id, double Odds)> faults)
    {
        if (ruledOut.Count == 0)
            return;
        var most = double.NegativeInfinity;
        foreach (var (id, odds) in faults)
            most = ruledOut.Contains(id) ? most : Math.Max(most, odds - Weights.Behind);
        foreach (ref var fault in faults)
        {
            if (most > double.NegativeInfinity && ruledOut.Contains(fault.Id))
                fault.Odds = Math.Min(fault.Odds, most);
        }
    }

    /// <summary>Of two faults that fit alike, the more frequent one is likelier meant.</summary>
    private static double Favor(double weight) =>
        MatchThresholds.FavorPerDoubling * Math.Log2(Math.Clamp(weight, 0.25, 8));

    /// <summary>
    /// For each fault its best symptom: how well that fits, times how likely the fault is behind it against the
    /// likeliest.
    /// </summary>
    private static Dictionary<string, double> Explained(ImmutableArray<MatchCandidate> symptoms, ISymptomCauses causes)
    {
        var explained = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var symptom in symptoms.Where(symptom => symptom.Score >= MatchThresholds.FaintestSymptom))
        {
            ImmutableArray<SymptomCause> behind = [.. causes.CausesOf(symptom.Id)];
            double likeliest = 0;
            foreach (var cause in behind)
                likeliest = Math.Max(likeliest, cause.Probability * cause.Weight);
            foreach (var cause in behind)
            {
                ref var best = ref CollectionsMarshal.GetValueRefOrAddDefault(explained, cause.FaultId, out _);
                best = Math.Max(best, symptom.Score * cause.Probability * cause.Weight / likeliest);
            }
        }
        return explained;
    }
}
