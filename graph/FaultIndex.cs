using DxAssistant.Graph.Model;

namespace DxAssistant.Graph;

/// <summary>What refers to each fault, by id of what refers: the questions that every walk asks, without the whole
/// graph.</summary>
internal sealed class FaultIndex
{
    private readonly Dictionary<FaultId, List<Symptom>> symptoms = [];
    private readonly Dictionary<FaultId, List<Check>> checks = [];
    private readonly Dictionary<FaultId, List<Repair>> repairs = [];

    public FaultIndex(GraphParts parts)
    {
        foreach (Symptom symptom in parts.Symptoms.Values)
            foreach (FaultId fault in symptom.Causes.Keys) Enter(symptoms, fault, symptom);
        foreach (Check check in parts.Checks.Values)
            foreach (FaultId fault in check.Likelihoods.Keys)
                if (SetsApart(check, fault, parts.Faults.Count)) Enter(checks, fault, check);
        foreach (Repair repair in parts.Repairs.Values)
            foreach (FaultId fault in repair.Fixes) Enter(repairs, fault, repair);
    }

    public IReadOnlyList<Symptom> Symptoms(FaultId fault) => symptoms.TryGetValue(fault, out var found) ? found : [];

    /// <summary>The checks that give a fault a row of its own that differs from another fault's.</summary>
    public IReadOnlyList<Check> Checks(FaultId fault) => checks.TryGetValue(fault, out var found) ? found : [];

    public IReadOnlyList<Repair> Repairs(FaultId fault) => repairs.TryGetValue(fault, out var found) ? found : [];

    /// <summary>True when the row of a fault that the check lists differs from that of another fault.</summary>
    /// <param name="faults">
    /// How many faults there are: when some have no row of their own, they have that of every other.
    /// </param>
    public static bool SetsApart(Check check, FaultId fault, int faults) =>
        check.Likelihoods[fault] is var row
        && ((check.Likelihoods.Count < faults && Check.RowsDiffer(row, check.EveryOtherFault))
            || check.Likelihoods.Values.Any(other => Check.RowsDiffer(row, other)));

    private static void Enter<T>(Dictionary<FaultId, List<T>> lists, FaultId fault, T part)
    {
        if (!lists.TryGetValue(fault, out List<T>? list)) lists[fault] = list = [];
        list.Add(part);
    }
}
