namespace DxAssistant.Conversation.Replies;

/// <summary>One reading to fill in.</summary>
/// <param name="Unit">The unit a bare number is taken in.</param>
/// <param name="Where">Where the leads or gauges go.</param>
/// <param name="Given">What was already given for it; null when still open.</param>
public sealed record Field(string Label, string Unit, string Where, string? Given);
