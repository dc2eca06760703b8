using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Planning;

/// <summary>What to do next.</summary>
public abstract record PlannedStep
{
    private PlannedStep() { }

    /// <summary>Bring the unit to an access state and do a check.</summary>
    public sealed record DoCheck(CheckId Check, AccessId Access) : PlannedStep;

    /// <summary>Bring the unit to an access state, do a repair and verify it.</summary>
    public sealed record DoRepair(RepairId Repair, AccessId Access) : PlannedStep;

    /// <summary>One fault is left, or no check tells those left apart; the problem asks for no repair.</summary>
    public sealed record Nothing : PlannedStep;
}
