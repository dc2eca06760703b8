using DxAssistant.Conversation.Replies;

namespace DxAssistant.Server.Summary;

/// <summary>One check that gave a result.</summary>
/// <param name="Answer">What was said or read.</param>
/// <param name="Figures">The figures behind the verdict; null when the outcome was tapped.</param>
internal sealed record SummaryCheck(string Title, DateTimeOffset At, string Answer, VerdictFigures? Figures);
