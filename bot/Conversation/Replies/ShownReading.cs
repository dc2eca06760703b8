namespace DxAssistant.Conversation.Replies;

/// <summary>A reading as it is shown back.</summary>
/// <param name="Odd">Whether it is the odd one of its set.</param>
public sealed record ShownReading(string Label, string Value, bool Odd);
