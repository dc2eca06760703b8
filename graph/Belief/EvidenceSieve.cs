using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph;

/// <summary>Refuses evidence that makes no sense and keeps the last word on each symptom, check and repair.</summary>
internal static class EvidenceSieve
{
    /// <summary>The evidence that counts, in the order of telling.</summary>
    /// <exception cref="ArgumentException">
    /// Evidence names a part that is not in the graph, or is out of its range.
    /// </exception>
    public static ImmutableArray<Evidence> Counted(FaultGraph graph, ImmutableArray<Evidence> evidence)
    {
        HashSet<object> settled = [];
        ImmutableArray<Evidence>.Builder counted = ImmutableArray.CreateBuilder<Evidence>();
        for (int told = evidence.Length - 1; told >= 0; told--)
            if (settled.Add(Subject(graph, evidence[told]))) counted.Add(evidence[told]);
        counted.Reverse();
        return counted.ToImmutable();
    }

    private static object Subject(FaultGraph graph, Evidence evidence) => evidence switch
    {
        Evidence.SymptomReported reported => Reported(graph, reported),
        Evidence.OutcomeSeen seen => Seen(graph, seen),
        Evidence.RepairFailed failed => Done(graph, failed.Repair, failed.NotHeld),
        Evidence.FaultMended mended => Done(graph, mended.Repair, mended.NotHeld),
        Evidence.RepairWorked worked => Tried(graph, worked.Repair),
        Evidence.RepairedEarlier earlier => ("earlier", Earlier(graph, earlier)),
        _ => throw new ArgumentException($"unknown evidence {evidence}", nameof(evidence)),
    };

    private static SymptomId Reported(FaultGraph graph, Evidence.SymptomReported reported)
    {
        if (graph.Find(reported.Symptom) is null) throw Unknown("symptom", reported.Symptom.Value);
        if (reported.Confidence is not (> 0 and <= 1))
            throw new ArgumentException(
                $"{reported.Symptom}: confidence must be above 0 and at most 1, not {reported.Confidence}");
        return reported.Symptom;
    }

    private static CheckId Seen(FaultGraph graph, Evidence.OutcomeSeen seen)
    {
        Check check = graph.Find(seen.Check) ?? throw Unknown("check", seen.Check.Value);
        if (seen.Weights.IsDefault || seen.Weights.Length != check.Outcomes.Length)
            throw new ArgumentException($"{check.Id}: there must be {check.Outcomes.Length} weights");
        if (!seen.Weights.All(weight => weight >= 0 && double.IsFinite(weight)) || !(seen.Weights.Sum() > 0))
            throw new ArgumentException($"{check.Id}: weights must be 0 or more, one of them above 0");
        return check.Id;
    }

    private static RepairId Earlier(FaultGraph graph, Evidence.RepairedEarlier earlier) =>
        earlier.Odds.Values.All(odds => odds > 0 && double.IsFinite(odds))
            ? Tried(graph, earlier.Repair)
            : throw new ArgumentException($"{earlier.Repair}: odds must be above 0");

    private static RepairId Done(FaultGraph graph, RepairId repair, double notHeld) => notHeld is >= 0 and <= 1
        ? Tried(graph, repair)
        : throw new ArgumentException($"{repair}: not held must be 0 to 1, not {notHeld}");

    private static RepairId Tried(FaultGraph graph, RepairId repair) =>
        graph.Find(repair) is null ? throw Unknown("repair", repair.Value) : repair;

    private static ArgumentException Unknown(string kind, string id) => new($"the graph has no {kind} {id}");
}
