using System.Collections.Immutable;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Cases.Brought;

/// <summary>A turn that was taken away from the server.</summary>
/// <param name="Events">As the engine there made them, the message among them, the reply last.</param>
public sealed record BroughtTurn(string TurnId, ImmutableArray<CaseEvent> Events);
