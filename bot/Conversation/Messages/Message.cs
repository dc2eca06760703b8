namespace DxAssistant.Conversation.Messages;

/// <summary>One thing a person said or tapped.</summary>
/// <param name="TurnId">
/// The sender's own id of this turn; a retry carries the same one and is not a second turn.
/// </param>
/// <param name="Body">What was said or tapped.</param>
/// <param name="By">Who said it, as the channel knows them; shown in the record.</param>
public sealed record Message(string TurnId, MessageBody Body, string By = "technician");
