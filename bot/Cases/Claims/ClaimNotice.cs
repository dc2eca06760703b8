namespace DxAssistant.Cases.Claims;

/// <summary>News that waits to be told.</summary>
/// <param name="Body">The news as JSON.</param>
/// <param name="Tries">How often it was tried in vain.</param>
public sealed record ClaimNotice(string Claim, long Sequence, string Body, int Tries);
