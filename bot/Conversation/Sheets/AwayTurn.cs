using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.Sheets;

/// <summary>A turn that was taken away from the server.</summary>
/// <param name="Version">The version of the content it follows from.</param>
/// <param name="Said">What was said or tapped, as it is written on the sheet; null at the opening.</param>
public sealed record AwayTurn(
    string Version, string TurnId, string By, string? Said, SheetHead Head, ImmutableArray<CaseEvent> Events,
    Reply Reply);
