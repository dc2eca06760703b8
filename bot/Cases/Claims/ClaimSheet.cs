using System.Collections.Immutable;

namespace DxAssistant.Cases.Claims;

/// <summary>All that a claim states, built from the log of its case.</summary>
/// <param name="Through">The last entry of the log it was built from.</param>
/// <param name="LogHash">The hash of the log up to and with that entry.</param>
/// <param name="Failed">The day the case was opened, UTC.</param>
/// <param name="Part">The part that is claimed.</param>
/// <param name="Repair">The repair that fits it; null when the pages have none.</param>
/// <param name="Works">Whether the unit worked after the repair; null while it was not tried out.</param>
/// <param name="Belief">How likely the fault is by the evidence before the part was changed, 0 to 1.</param>
/// <param name="Needed">How likely the terms of the series want it.</param>
/// <param name="Wants">The fault page's words on what the desk wants to see.</param>
/// <param name="Missing">The titles of demanded checks without a settled result.</param>
public sealed record ClaimSheet(
    string Case, long Through, string LogHash, string ContentVersion, string Series, string SeriesTitle, ClaimUnit Unit,
    DateOnly Failed, string Fault, string FaultTitle, string Part, string? Repair, string? RepairTitle, bool? Works,
    double Belief, double Needed, string Wants, ImmutableArray<ClaimEvidence> Evidence, ImmutableArray<string> Missing,
    ClaimCoverage Coverage)
{
    /// <summary>
    /// What is left possible where no fault was proven, likeliest first; null where one was, so that older sheets keep
    /// their hashes.
    /// </summary>
    /// <remarks>The fault of the sheet is then the likeliest of them, and its part the one in question.</remarks>
    public ImmutableArray<ClaimSuspect>? LeftPossible { get; init; }

    /// <summary>The photos of the job; null when there are none, so that older sheets keep their hashes.</summary>
    public ImmutableArray<ClaimPhoto>? Photos { get; init; }
}
