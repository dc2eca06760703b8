using DxAssistant.Conversation.Replies;

namespace DxAssistant.Server.Chat;

/// <summary>One turn as the page shows it.</summary>
/// <param name="Before">The last sequence number before the turn, by which a page sees that another window was
/// faster.</param>
/// <param name="Last">The last sequence number of the turn.</param>
/// <param name="Said">What was said or tapped; null at the opening.</param>
internal sealed record TurnView(
    string TurnId, DateTimeOffset At, long Before, long Last, string By, string? Said, Reply Reply);
