using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Planning;

/// <summary>Refuses a problem whose parts do not fit together.</summary>
internal static class ProblemInspection
{
    /// <param name="rows">Whether the rows of the checks are to be inspected; a graph has done so before.</param>
    public static void Inspect(SequencingProblem problem, bool rows)
    {
        if (problem.Faults.IsEmpty) throw new ArgumentException("a problem needs at least one fault");
        RefuseTwice(problem.Faults.Select(fault => fault.Id.Value), "fault");
        RefuseTwice(problem.Checks.Select(check => check.Id.Value), "check");
        RefuseTwice(problem.Repairs.Select(repair => repair.Id.Value), "repair");
        foreach (Fault fault in problem.Faults)
            if (!(fault.Weight > 0) || !double.IsFinite(fault.Weight))
                throw new ArgumentException($"fault {fault.Id}: the prior must be above 0, not {fault.Weight}");
        HashSet<FaultId> faults = [.. problem.Faults.Select(fault => fault.Id)];
        foreach (Check check in problem.Checks) Inspect(check, problem);
        if (rows)
            foreach (Check check in problem.Checks) InspectRows(check, faults);
        foreach (Repair repair in problem.Repairs) Inspect(repair, faults, problem);
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
        if (check.Leaves is not { } left) return;
        InspectAccess([left], $"check {check.Id}", problem);
        if (check.Access.Any(state => problem.Access.Minutes(state, left) is var way && double.IsFinite(way)
            && way > check.Minutes))
            throw new ArgumentException($"check {check.Id}: its minutes must hold the way to {left}");
    }

    private static void InspectRows(Check check, HashSet<FaultId> faults)
    {
        int listed = 0;
        foreach ((FaultId fault, ImmutableArray<double> row) in check.Likelihoods)
        {
            if (!faults.Contains(fault)) continue;
            listed++;
            InspectRow(row, check, $"fault {fault}");
        }

        if (listed < faults.Count) InspectRow(check.EveryOtherFault, check, "every other fault");
    }

    private static void InspectRow(ImmutableArray<double> row, Check check, string whose)
    {
        if (row.IsDefault || row.Length != check.Outcomes.Length || !IsShares(row.AsSpan()))
            throw new ArgumentException(
                $"check {check.Id}, {whose}: needs {check.Outcomes.Length} likelihoods that sum to 1");
    }

    private static bool IsShares(ReadOnlySpan<double> row)
    {
        double sum = 0;
        foreach (double value in row)
        {
            if (value is not (>= 0 and <= 1)) return false;
            sum += value;
        }

        return Math.Abs(sum - 1) <= Check.RowTolerance;
    }

    private static void Inspect(Repair repair, HashSet<FaultId> faults, SequencingProblem problem)
    {
        InspectAccess(repair.Access, $"repair {repair.Id}", problem);
        InspectMinutes(repair.Minutes, $"repair {repair.Id}");
        InspectMinutes(repair.VerifyMinutes, $"repair {repair.Id}");
        foreach (FaultId fault in repair.Fixes)
            if (!faults.Contains(fault))
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
