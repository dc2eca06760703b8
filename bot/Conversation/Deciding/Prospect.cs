using DxAssistant.Conversation.Events;
using DxAssistant.Graph;

namespace DxAssistant.Conversation.Deciding;

/// <summary>What one answer to a check would lead to.</summary>
/// <param name="Next">The step the walk would take then; null when it would end.</param>
/// <param name="Minutes">Expected minutes to go then; null when nothing is left to plan.</param>
internal sealed record Prospect(Foreseen Seen, StepChosen? Next, double? Minutes);
