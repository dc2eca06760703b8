using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Planning;

/// <summary>
/// Why a fault that may be present cannot be mended in this situation. One for each repair that would cure it.
/// </summary>
public abstract record OutOfReach(FaultId Fault)
{
    /// <summary>No repair is known.</summary>
    public sealed record NoRepair(FaultId Fault) : OutOfReach(Fault);

    /// <summary>The repair asks for a higher role.</summary>
    public sealed record NeedsRole(FaultId Fault, RepairId Repair, Role Role) : OutOfReach(Fault);

    /// <summary>The repair was refused, or cannot be done here.</summary>
    public sealed record Barred(FaultId Fault, RepairId Repair) : OutOfReach(Fault);

    /// <summary>This person cannot bring the unit to where the repair is done or verified.</summary>
    public sealed record NoWay(FaultId Fault, RepairId Repair) : OutOfReach(Fault);
}
