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
        FaultGraph graph, ImmutableArray<Evidence> evidence, Predicate<FaultId>? applies)
    {
        ImmutableArray<Evidence.SymptomReported> reports = [.. evidence.OfType<Evidence.SymptomReported>()];
        bool isOpen = reports.All(report => report.Confidence < 1);
        IEnumerable<FaultId> inQuestion = isOpen ? graph.Faults.Select(fault => fault.Id) : Listed(graph, reports);
        return inQuestion.Where(id => applies?.Invoke(id) is not false);
    }

    /// <summary>Whether some reported symptom lists the fault, or it is "none of these".</summary>
    public static bool IsListed(FaultGraph graph, IEnumerable<Evidence.SymptomReported> reports, FaultId fault) =>
        fault == FaultId.NoneOfThese || reports.Any(report => graph.Find(report.Symptom)!.Causes.ContainsKey(fault));

    // From the symptoms, not from all faults: a large library costs a case nothing.
    private static IEnumerable<FaultId> Listed(FaultGraph graph, ImmutableArray<Evidence.SymptomReported> reports) =>
        reports.SelectMany(report => graph.Find(report.Symptom)!.Causes.Keys).Append(FaultId.NoneOfThese).Distinct()
            .Where(id => graph.Find(id) is not null).Order();
}
