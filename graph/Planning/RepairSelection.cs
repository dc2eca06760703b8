using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Planning;

/// <summary>Which repairs a person can do here, and which faults that leaves without one.</summary>
internal sealed class RepairSelection(FaultGraph graph, Situation situation, AccessStates access)
{
    private readonly ImmutableArray<OutOfReach>.Builder outOfReach = ImmutableArray.CreateBuilder<OutOfReach>();
    private readonly bool canVerify = graph.Access.Verify is not { } verify || access.Contains(verify);

    public ImmutableArray<OutOfReach> OutOfReach => outOfReach.ToImmutable();

    /// <summary>The repairs that can be done, by id, and the hand-over when faults are out of reach.</summary>
    public ImmutableArray<Repair> For(ImmutableArray<Fault> faults)
    {
        ImmutableHashSet<FaultId> inQuestion = [.. faults.Select(fault => fault.Id)];
        List<Repair> repairs =
        [
            .. graph.RepairsOf(inQuestion).Where(repair => Obstacle(repair, default) is null)
                .Select(repair => repair with
                {
                    Access = [.. repair.Access.Where(access.Contains)],
                    Fixes = [.. repair.Fixes.Where(inQuestion.Contains)],
                })
                .Where(repair => !repair.Fixes.IsEmpty),
        ];
        ImmutableHashSet<FaultId> curable = [.. repairs.SelectMany(repair => repair.Fixes)];
        ImmutableArray<FaultId> left = [.. faults.Select(fault => fault.Id).Where(fault => !curable.Contains(fault))];
        foreach (FaultId fault in left) Explain(fault);
        if (!left.IsEmpty) repairs.Add(HandOver(left));
        return [.. repairs];
    }

    // Where the unit stands comes first: nobody opens a unit to hand it over.
    private Repair HandOver(ImmutableArray<FaultId> faults) => new(
        RepairId.HandOver, situation.HandOverMinutes, 0,
        [situation.Access, .. access.All.Select(state => state.Id).Where(id => id != situation.Access)],
        Role.Anyone, faults);

    private void Explain(FaultId fault)
    {
        ImmutableArray<Repair> cures = [.. graph.RepairsOf(fault)];
        if (cures.IsEmpty) outOfReach.Add(new OutOfReach.NoRepair(fault));
        foreach (Repair repair in cures) outOfReach.Add(Obstacle(repair, fault)!);
    }

    private OutOfReach? Obstacle(Repair repair, FaultId fault)
    {
        if (situation.BarredRepairs.Contains(repair.Id)) return new OutOfReach.Barred(fault, repair.Id);
        if (!situation.Who.May(repair.Who)) return new OutOfReach.NeedsRole(fault, repair.Id, repair.Who);
        return canVerify && repair.Access.Any(access.Contains) ? null : new OutOfReach.NoWay(fault, repair.Id);
    }
}
