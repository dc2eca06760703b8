using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Planning;

/// <summary>Who is at the unit, how it stands, and what cannot be done there.</summary>
/// <param name="Access">The access state the unit is in.</param>
public sealed record Situation(Role Who, AccessId Access)
{
    public Objective Objective { get; init; } = Objective.Repair;

    /// <summary>Checks skipped or impossible here: they are never planned.</summary>
    public ImmutableHashSet<CheckId> BarredChecks { get; init; } = [];

    /// <summary>Repairs refused or impossible here: they are never planned.</summary>
    public ImmutableHashSet<RepairId> BarredRepairs { get; init; } = [];

    /// <summary>Access states the unit cannot be brought into here: nothing is planned in them.</summary>
    public ImmutableHashSet<AccessId> RefusedAccess { get; init; } = [];

    /// <summary>
    /// What it costs to leave the case to somebody else; 0 or more. A second visit, common practice, no source.
    /// </summary>
    public double HandOverMinutes { get; init; } = 90;
}
