namespace DxAssistant.Conversation.Replies;

/// <summary>One fault still in question.</summary>
/// <param name="Probability">0 to 1, rounded to three places.</param>
public sealed record BeliefLine(string Fault, string Title, double Probability);
