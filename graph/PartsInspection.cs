using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph;

/// <summary>
/// Tests each part by itself and against the parts it refers to; keeps what is usable and notes the rest.
/// </summary>
internal sealed class PartsInspection(AccessStates access)
{
    private readonly ImmutableArray<Finding>.Builder findings = ImmutableArray.CreateBuilder<Finding>();
    private ImmutableSortedDictionary<FaultId, Fault> faults = ImmutableSortedDictionary<FaultId, Fault>.Empty;

    public ImmutableArray<Finding> Findings => findings.ToImmutable();

    public GraphParts Inspect(
        IEnumerable<Fault> allFaults, IEnumerable<Symptom> symptoms,
        IEnumerable<Check> checks, IEnumerable<Repair> repairs)
    {
        faults = Keep(allFaults, fault => fault.Id, fault => new Node.OfFault(fault.Id), Usable);
        return new GraphParts(
            faults,
            Keep(symptoms, symptom => symptom.Id, symptom => new Node.OfSymptom(symptom.Id), Usable),
            Keep(checks, check => check.Id, check => new Node.OfCheck(check.Id), Usable),
            Keep(repairs, repair => repair.Id, repair => new Node.OfRepair(repair.Id), Usable),
            access);
    }

    /// <summary>Parts that were inspected before with some in place of those that have their ids; only these are
    /// inspected.</summary>
    public GraphParts Inspect(GraphEdit edit, GraphParts before)
    {
        faults =
            before.Faults.SetItems(Keep(edit.Faults, fault => fault.Id, fault => new Node.OfFault(fault.Id), Usable));
        return before with
        {
            Faults = faults,
            Symptoms = before.Symptoms.SetItems(
                Keep(edit.Symptoms, symptom => symptom.Id, symptom => new Node.OfSymptom(symptom.Id), Usable)),
            Checks = before.Checks.SetItems(
                Keep(edit.Checks, check => check.Id, check => new Node.OfCheck(check.Id), Usable)),
            Repairs = before.Repairs.SetItems(
                Keep(edit.Repairs, repair => repair.Id, repair => new Node.OfRepair(repair.Id), Usable)),
        };
    }

    // Parts are inspected by id, so that findings come in the same order whatever the order of the parts.
    private ImmutableSortedDictionary<TId, TPart> Keep<TId, TPart>(
        IEnumerable<TPart> parts, Func<TPart, TId> idOf, Func<TPart, Node> nodeOf, Func<TPart, Node, TPart?> usable)
        where TId : struct, IComparable<TId> where TPart : class
    {
        ImmutableSortedDictionary<TId, TPart>.Builder kept = ImmutableSortedDictionary.CreateBuilder<TId, TPart>();
        TPart[] ordered = [.. parts.OrderBy(idOf)];
        for (int first = 0, next; first < ordered.Length; first = next)
        {
            TId id = idOf(ordered[first]);
            for (next = first + 1; next < ordered.Length && idOf(ordered[next]).CompareTo(id) == 0;) next++;
            Node node = nodeOf(ordered[first]);
            if (next - first > 1) findings.Add(new Finding.IdTwice(node));
            if (usable(ordered[first], node) is { } part) kept.Add(id, part);
        }

        return kept.ToImmutable();
    }

    private Fault? Usable(Fault fault, Node node) =>
        InRange(node, fault.Weight, fault.Weight > 0 && double.IsFinite(fault.Weight)) ? fault : null;

    private Symptom? Usable(Symptom symptom, Node node)
    {
        FaultId[] wrong = [.. symptom.Causes.Where(cause => !Known(cause.Key, node)
            || !InRange(node, cause.Value, cause.Value is > 0 and <= 1)).Select(cause => cause.Key)];
        return wrong.Length == 0 ? symptom : symptom with { Causes = symptom.Causes.RemoveRange(wrong) };
    }

    private Check? Usable(Check check, Node node)
    {
        check = WithKnownEnd(check, node);
        ImmutableArray<AccessId> usableAccess = UsableAccess(check.Access, node);
        bool timed = InRange(node, check.Minutes, IsDuration(check.Minutes));
        if (check.Outcomes.Length < 2 || check.Outcomes.Distinct().Count() < check.Outcomes.Length)
        {
            findings.Add(new Finding.UnusableOutcomes(check.Id));
            return null;
        }

        if (usableAccess.IsEmpty || !timed || !HoldsItsWay(check, usableAccess, node)
            || !UsableRow(check, null, check.EveryOtherFault))
            return null;
        FaultId[] wrong = [.. check.Likelihoods.Where(row => !Known(row.Key, node)
            || !UsableRow(check, row.Key, row.Value)).Select(row => row.Key)];
        return wrong.Length == 0 && usableAccess.Length == check.Access.Length
            ? check
            : check with { Access = usableAccess, Likelihoods = check.Likelihoods.RemoveRange(wrong) };
    }

    private Repair? Usable(Repair repair, Node node)
    {
        ImmutableArray<AccessId> usableAccess = UsableAccess(repair.Access, node);
        bool timed = InRange(node, repair.Minutes, IsDuration(repair.Minutes))
            & InRange(node, repair.VerifyMinutes, IsDuration(repair.VerifyMinutes));
        if (usableAccess.IsEmpty || !timed) return null;
        return repair with
        {
            Access = usableAccess,
            Fixes = [.. repair.Fixes.Distinct().Order().Where(fault => Known(fault, node))],
        };
    }

    private Check WithKnownEnd(Check check, Node node)
    {
        if (check.Leaves is not { } left || access.Contains(left)) return check;
        findings.Add(new Finding.UnknownReference(node, new Node.OfAccess(left)));
        return check with { Leaves = null };
    }

    // Where a check leaves the unit it has brought it itself: no plan may save a way by a check.
    private bool HoldsItsWay(Check check, ImmutableArray<AccessId> states, Node node) => InRange(
        node, check.Minutes, check.Leaves is not { } left
            || states.All(state => access.Minutes(state, left) <= check.Minutes));

    private ImmutableArray<AccessId> UsableAccess(ImmutableArray<AccessId> wanted, Node node)
    {
        foreach (AccessId id in wanted)
            if (!access.Contains(id)) findings.Add(new Finding.UnknownReference(node, new Node.OfAccess(id)));
        ImmutableArray<AccessId> usable = [.. wanted.Distinct().Where(access.Contains)];
        if (usable.IsEmpty) findings.Add(new Finding.WithoutAccess(node));
        return usable;
    }

    private bool UsableRow(Check check, FaultId? fault, ImmutableArray<double> row)
    {
        bool usable = !row.IsDefault && row.Length == check.Outcomes.Length
            && row.All(value => value is >= 0 and <= 1) && Math.Abs(row.Sum() - 1) <= Check.RowTolerance;
        if (!usable) findings.Add(new Finding.UnusableRow(check.Id, fault));
        return usable;
    }

    private bool Known(FaultId fault, Node from)
    {
        bool known = faults.ContainsKey(fault);
        if (!known) findings.Add(new Finding.UnknownReference(from, new Node.OfFault(fault)));
        return known;
    }

    private bool InRange(Node node, double value, bool inside)
    {
        if (!inside) findings.Add(new Finding.NumberOutOfRange(node, value));
        return inside;
    }

    private static bool IsDuration(double minutes) => minutes >= 0 && double.IsFinite(minutes);
}
