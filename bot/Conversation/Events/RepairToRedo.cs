namespace DxAssistant.Conversation.Events;

/// <summary>
/// The unit was tried and the work itself did not hold, such as a joint that leaks again: it says nothing of the fault.
/// </summary>
public sealed record RepairToRedo(string Repair, string Access) : CaseEvent;
