namespace DxAssistant.Conversation.State;

/// <summary>A repair that was made on the same unit before, after which it worked.</summary>
/// <param name="Case">The case it was made in.</param>
/// <param name="Days">How many days before it was looked up.</param>
public sealed record EarlierWork(string Case, DateOnly Done, int Days, string Repair, string Fault);
