namespace DxAssistant.Cases.Claims;

/// <summary>A place in the list of claims: just after the claim of that name, which was last changed then.</summary>
public sealed record ClaimPlace(DateTimeOffset At, string Id);
