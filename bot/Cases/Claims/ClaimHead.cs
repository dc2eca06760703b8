namespace DxAssistant.Cases.Claims;

/// <summary>One claim in a list of claims.</summary>
/// <param name="At">When it was last changed, UTC.</param>
public sealed record ClaimHead(string Id, string Case, ClaimState State, DateTimeOffset At);
