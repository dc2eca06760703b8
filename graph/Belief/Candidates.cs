using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph;

/// <summary>Which faults are in question at all.</summary>
internal static class Candidates
{
    /// <summary>
    /// The applicable faults that at least one reported symptom lists, and "none of these"; all applicable faults
    /// while nothing is reported, or nothing without doubt: what may not have been meant excludes no fault. By id.
    /// </summary>
    public static IEnumerable<FaultId> Of(
        FaultGraph graph, ImmutableArray<Evidence> evidence, IReadOnlySet<FaultId>? applicable)
    {
        ImmutableArray<Evidence.SymptomReported> reports = [.. evidence.OfType<Evidence.SymptomReported>()];
        bool isOpen = reports.All(report => report.Confidence < 1);
        return graph.Faults.Select(fault => fault.Id)
            .Where(id => applicable is null || applicable.Contains(id))
            .Where(id => isOpen || IsListed(graph, reports, id));
    }

    /// <summary>Whether some reported symptom lists the fault, or it is "none of these".</summary>
    public static bool IsListed(FaultGraph graph, IEnumerable<Evidence.SymptomReported> reports, FaultId fault) =>
        fault == FaultId.NoneOfThese || reports.Any(report => graph.Find(report.Symptom)!.Causes.ContainsKey(fault));
}
