using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph;

/// <summary>Which faults are in question at all.</summary>
internal static class Candidates
{
    /// <summary>
    /// The applicable faults that at least one reported symptom lists, and "none of these"; all applicable faults
    /// while no symptom is reported. By id.
    /// </summary>
    public static IEnumerable<FaultId> Of(
        FaultGraph graph, ImmutableArray<Evidence> evidence, IReadOnlySet<FaultId>? applicable)
    {
        ImmutableArray<Symptom> reported =
            [.. evidence.OfType<Evidence.SymptomReported>().Select(symptom => graph.Find(symptom.Symptom)!)];
        return graph.Faults.Select(fault => fault.Id)
            .Where(id => applicable is null || applicable.Contains(id))
            .Where(id => reported.IsEmpty || id == FaultId.NoneOfThese
                || reported.Any(symptom => symptom.Causes.ContainsKey(id)));
    }
}
