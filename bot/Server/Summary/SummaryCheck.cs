using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Server.Summary;

/// <summary>One check that gave a result.</summary>
/// <param name="Answer">What was said or read.</param>
/// <param name="Figures">The figures behind the verdict; null when the outcome was tapped.</param>
/// <param name="Pictures">The verdict drawn; empty when there is no picture of it.</param>
internal sealed record SummaryCheck(
    string Title, DateTimeOffset At, string Answer, VerdictFigures? Figures, ImmutableArray<Picture> Pictures);
