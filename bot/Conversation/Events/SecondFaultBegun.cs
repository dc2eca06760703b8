namespace DxAssistant.Conversation.Events;

/// <summary>A verified repair left symptoms over: the walk begins anew for them.</summary>
public sealed record SecondFaultBegun : CaseEvent
{
    /// <summary>
    /// What goes over into the new walk, where the second fault was seen beside the first; null where nothing was seen
    /// of it.
    /// </summary>
    public CarriedOver? Carried { get; init; }
}
