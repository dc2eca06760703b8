using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Planning;

/// <summary>Refuses a problem whose parts do not fit together.</summary>
internal static class ProblemInspection
{
    public static void Inspect(SequencingProblem problem)
    {
        if (problem.Faults.IsEmpty) throw new ArgumentException("a problem needs at least one fault");
        RefuseTwice(problem.Faults.Select(fault => fault.Id.Value), "fault");
        RefuseTwice(problem.Checks.Select(check => check.Id.Value), "check");
        RefuseTwice(problem.Repairs.Select(repair => repair.Id.Value), "repair");
        foreach (Fault fault in problem.Faults)
            if (!(fault.Weight > 0) || !double.IsFinite(fault.Weight))
                throw new ArgumentException($"fault {fault.Id}: the prior must be above 0, not {fault.Weight}");
        foreach (Check check in problem.Checks) Inspect(check, problem);
        foreach (Repair repair in problem.Repairs) Inspect(repair, problem);
        foreach (AccessState from in problem.Access.All)
            foreach (AccessState to in problem.Access.All)
                if (!double.IsFinite(problem.Access.Minutes(from.Id, to.Id)))
                    throw new ArgumentException($"there is no way from {from.Id} to {to.Id}");
        if (problem.Objective == Objective.Isolate) return;
        HashSet<FaultId> curable = [.. problem.Repairs.SelectMany(repair => repair.Fixes)];
        foreach (Fault fault in problem.Faults)
            if (!curable.Contains(fault.Id)) throw new ArgumentException($"no repair cures fault {fault.Id}");
    }

    private static void Inspect(Check check, SequencingProblem problem)
    {
        InspectAccess(check.Access, $"check {check.Id}", problem);
        InspectMinutes(check.Minutes, $"check {check.Id}");
        foreach (Fault fault in problem.Faults)
        {
            ImmutableArray<double> row = check.Row(fault.Id);
            if (row.IsDefault || row.Length != check.Outcomes.Length || !row.All(value => value is >= 0 and <= 1)
                || Math.Abs(row.Sum() - 1) > Check.RowTolerance)
                throw new ArgumentException(
                    $"check {check.Id}, fault {fault.Id}: needs {check.Outcomes.Length} likelihoods that sum to 1");
        }
    }

    private static void Inspect(Repair repair, SequencingProblem problem)
    {
        InspectAccess(repair.Access, $"repair {repair.Id}", problem);
        InspectMinutes(repair.Minutes, $"repair {repair.Id}");
        InspectMinutes(repair.VerifyMinutes, $"repair {repair.Id}");
        foreach (FaultId fault in repair.Fixes)
            if (!problem.Faults.Any(known => known.Id == fault))
                throw new ArgumentException($"repair {repair.Id}: {fault} is not a fault of the problem");
    }

    private static void InspectAccess(ImmutableArray<AccessId> access, string part, SequencingProblem problem)
    {
        if (access.IsEmpty) throw new ArgumentException($"{part} needs an access state");
        foreach (AccessId state in access)
            if (!problem.Access.Contains(state)) throw new ArgumentException($"{part}: {state} is not an access state");
    }

    private static void InspectMinutes(double minutes, string part)
    {
        if (!(minutes >= 0) || !double.IsFinite(minutes))
            throw new ArgumentException($"{part}: minutes must be 0 or more, not {minutes}");
    }

    private static void RefuseTwice(IEnumerable<string> ids, string kind)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (string id in ids)
            if (!seen.Add(id)) throw new ArgumentException($"{kind} {id} is there twice");
    }
}
