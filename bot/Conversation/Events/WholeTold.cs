using System.Collections.Immutable;
using DxAssistant.Conversation.Told;

namespace DxAssistant.Conversation.Events;

/// <summary>A message told several things at once. None of them counts before it is confirmed.</summary>
public sealed record WholeTold(ImmutableArray<ToldItem> Items) : CaseEvent;
