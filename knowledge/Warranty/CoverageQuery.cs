using DxAssistant.Graph.Model;

namespace DxAssistant.Knowledge.Warranty;

/// <summary>What decides whether a repair is paid.</summary>
/// <param name="Series">The id of the series of the unit.</param>
/// <param name="Installed">The day of installation; null when unknown.</param>
/// <param name="Bought">The day on the bill; null when unknown.</param>
/// <param name="Registered">The day of registration; null when it never was.</param>
/// <param name="Failed">The day the fault was reported.</param>
/// <param name="Repair">The repair that was made or is asked for.</param>
public sealed record CoverageQuery(
    string Series, DateOnly? Installed, DateOnly? Bought, DateOnly? Registered, DateOnly Failed, FaultId Fault,
    RepairId Repair);
