namespace DxAssistant.Conversation.Events;

/// <summary>A verified repair left symptoms over: the walk begins anew for them.</summary>
public sealed record SecondFaultBegun : CaseEvent;
