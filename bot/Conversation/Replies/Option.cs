namespace DxAssistant.Conversation.Replies;

/// <summary>One thing that can be tapped.</summary>
/// <param name="Key">What the answer names.</param>
/// <param name="Label">What is shown.</param>
/// <param name="Picture">The same drawn; null when there is no picture of it.</param>
public sealed record Option(string Key, string Label, Picture? Picture = null);
