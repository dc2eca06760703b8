using DxAssistant.Conversation.Events;

namespace DxAssistant.Conversation.State;

/// <summary>The step of the walk that is on hand.</summary>
public sealed record ChosenStep(StepKind Kind, string Id, string Access);
