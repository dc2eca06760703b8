namespace DxAssistant.Conversation.Events;

/// <summary>
/// A repair was made, and what is measured before its trial shows another fault beside the one it cures.
/// </summary>
/// <param name="Fault">The most likely fault among those the repair cures.</param>
/// <param name="Check">The check that shows the other.</param>
public sealed record FaultBeside(string Repair, string Fault, string Check) : CaseEvent;
