namespace DxAssistant.Conversation.Replies;

/// <summary>One thing that can be tapped.</summary>
/// <param name="Key">What the answer names.</param>
/// <param name="Label">What is shown.</param>
public sealed record Option(string Key, string Label);
