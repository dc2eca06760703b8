using DxAssistant.Graph.Model;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>The minutes of work that are paid for a repair.</summary>
public sealed record LabourAllowance(RepairId Repair, Passage Name, double Minutes, Source Source);
