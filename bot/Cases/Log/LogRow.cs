namespace DxAssistant.Cases.Log;

/// <summary>One event as every store keeps it.</summary>
/// <param name="Sequence">Counts from 1 within the case, without gaps.</param>
/// <param name="At">UTC, whole milliseconds.</param>
/// <param name="Body">The event as JSON in its one form, with a digest where a person's own words stood.</param>
/// <param name="Aside">The words behind the digests, as JSON; null when there are none.</param>
/// <param name="Hash">SHA-256 over the hash before it and all of the above but the words, in lower-case
/// hexadecimal.</param>
public sealed record LogRow(
    long Sequence, string TurnId, DateTimeOffset At, string Body, string? Aside, string Hash);
