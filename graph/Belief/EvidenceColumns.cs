using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph;

/// <summary>Turns evidence into likelihoods of the candidates.</summary>
/// <param name="reports">Every symptom that counts.</param>
internal sealed class EvidenceColumns(
    FaultGraph graph, FaultId[] candidates, double[] priors, ImmutableArray<Evidence.SymptomReported> reports)
{
    private readonly bool[] listed = [.. candidates.Select(fault => Candidates.IsListed(graph, reports, fault))];

    public EvidenceColumn Of(Evidence evidence) => evidence switch
    {
        Evidence.SymptomReported reported => OfSymptom(reported),
        Evidence.OutcomeSeen seen => OfOutcome(seen),
        Evidence.RepairFailed failed => OfRepair(failed, failed.Repair, $"3 {failed.Repair}", failed.NotHeld, 1),
        Evidence.FaultMended mended => OfRepair(mended, mended.Repair, $"3 {mended.Repair}", mended.NotHeld, 1),
        Evidence.RepairWorked worked => OfRepair(worked, worked.Repair, $"4 {worked.Repair}", 1, 0),
        Evidence.RepairedEarlier earlier => new EvidenceColumn(earlier, $"5 {earlier.Repair}",
            [.. candidates.Select(fault => earlier.Odds.GetValueOrDefault(fault, 1.0))]),
        _ => throw new ArgumentException($"unknown evidence {evidence}", nameof(evidence)),
    };

    // An unsure report is sure with probability c and says nothing otherwise. Saying nothing has the likelihood that
    // the report has on average, so that the posterior is c times that of a sure report plus (1 − c) times the prior.
    // A fault that no report lists was not meant: the report came with it as seldom as any symptom leaks.
    private EvidenceColumn OfSymptom(Evidence.SymptomReported reported)
    {
        Symptom symptom = graph.Find(reported.Symptom)!;
        double doubt = 1 - reported.Confidence, average = AverageOf(symptom);
        double[] likelihoods = new double[candidates.Length];
        for (int fault = 0; fault < candidates.Length; fault++)
            likelihoods[fault] = listed[fault]
                ? reported.Confidence * ShownBy(symptom, fault) + doubt * average
                : doubt * Belief.Leak;
        return new EvidenceColumn(reported, $"1 {reported.Symptom}", likelihoods);
    }

    private double AverageOf(Symptom symptom)
    {
        double shown = 0, all = 0;
        for (int fault = 0; fault < candidates.Length; fault++)
        {
            if (!listed[fault]) continue;
            shown += priors[fault] * ShownBy(symptom, fault);
            all += priors[fault];
        }

        return all > 0 ? shown / all : 0;
    }

    private double ShownBy(Symptom symptom, int fault) =>
        symptom.Causes.GetValueOrDefault(candidates[fault], Belief.Leak);

    private EvidenceColumn OfOutcome(Evidence.OutcomeSeen seen)
    {
        Check check = graph.Find(seen.Check)!;
        double all = seen.Weights.Sum();
        double[] likelihoods = new double[candidates.Length];
        double[] relative = new double[candidates.Length];
        var rows = new ImmutableArray<double>[candidates.Length];
        for (int fault = 0; fault < candidates.Length; fault++)
        {
            ImmutableArray<double> row = rows[fault] = check.Row(candidates[fault]);
            double likelihood = 0;
            for (int outcome = 0; outcome < row.Length; outcome++)
                likelihood += seen.Weights[outcome] / all * row[outcome];
            likelihoods[fault] = likelihood;
            relative[fault] = likelihood / row.Max();
        }

        return new EvidenceColumn(seen, $"2 {seen.Check}", likelihoods, relative, rows);
    }

    private EvidenceColumn OfRepair(Evidence evidence, RepairId id, string sortKey, double ifCured, double ifOther)
    {
        Repair repair = graph.Find(id)!;
        return new EvidenceColumn(evidence, sortKey,
            [.. candidates.Select(fault => repair.Fixes.Contains(fault) ? ifCured : ifOther)]);
    }
}
