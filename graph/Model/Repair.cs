using System.Collections.Immutable;

namespace DxAssistant.Graph.Model;

/// <summary>What cures one or more faults.</summary>
/// <param name="Minutes">How long it takes once the unit stands ready; 0 or more.</param>
/// <param name="VerifyMinutes">How long it takes to see whether it worked, part of every repair; 0 or more.</param>
/// <param name="Access">The access states in which it may be done, preferred first; at least one.</param>
/// <param name="Who">The least role that may do it.</param>
/// <param name="Fixes">The faults it cures; at least one.</param>
public sealed record Repair(
    RepairId Id,
    double Minutes,
    double VerifyMinutes,
    ImmutableArray<AccessId> Access,
    Role Who,
    ImmutableArray<FaultId> Fixes)
{
    /// <summary>
    /// What a repair costs on top when it does not cure, in minutes: the part that was changed for nothing; 0 or more.
    /// </summary>
    public double WrongMinutes { get; init; }
}
