namespace DxAssistant.Cases.Claims;

/// <summary>One entry of a claim's log.</summary>
/// <param name="Sequence">Counts from 1 within the claim, without gaps.</param>
/// <param name="At">UTC, whole milliseconds.</param>
/// <param name="By">Who did it.</param>
/// <param name="Hash">Of the entry before it and all of this one, in lower-case hexadecimal.</param>
public sealed record ClaimEntry(long Sequence, DateTimeOffset At, string By, ClaimEvent Event, string Hash);
