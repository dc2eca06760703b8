namespace DxAssistant.Conversation.State;

/// <summary>The way to an access state, step by step.</summary>
/// <param name="Done">How many of its steps are confirmed.</param>
public sealed record Approach(string Access, int Done);
