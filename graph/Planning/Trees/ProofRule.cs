using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Planning.Trees;

/// <summary>Nothing is repaired before it is proven, and where that leads too far, the page is left.</summary>
/// <param name="Before">
/// The check that must come before a repair at a position; null when the repair may be done.
/// </param>
/// <param name="LeavingMinutes">What leaving the page costs, minutes; 0 or more.</param>
public sealed record ProofRule(Func<Position, RepairId, CheckId?> Before, double LeavingMinutes);
