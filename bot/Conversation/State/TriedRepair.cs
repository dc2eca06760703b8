namespace DxAssistant.Conversation.State;

/// <summary>A repair that was made.</summary>
/// <param name="Fault">The fault it was made for.</param>
/// <param name="Works">Whether the unit worked afterwards.</param>
public sealed record TriedRepair(string Repair, string Fault, bool Works);
