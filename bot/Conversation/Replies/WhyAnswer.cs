namespace DxAssistant.Conversation.Replies;

/// <summary>What one answer would do.</summary>
/// <param name="Probability">That this is the answer, 0 to 1.</param>
/// <param name="Fault">The likeliest fault then.</param>
/// <param name="Before">How likely it is now, 0 to 1.</param>
/// <param name="Share">How likely it is then, 0 to 1.</param>
/// <param name="Next">The check or repair that would come next; null when the walk would end.</param>
/// <param name="Minutes">Expected minutes to go then; null when nothing would be left to plan.</param>
public sealed record WhyAnswer(string Outcome, double Probability, string Fault, double Before, double Share,
    string? Next, double? Minutes);
