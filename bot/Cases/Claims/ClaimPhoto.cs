namespace DxAssistant.Cases.Claims;

/// <summary>A photo that belongs to a claim.</summary>
/// <param name="Hash">SHA-256 of its bytes: a photo shown later is this one, or it is not.</param>
/// <param name="Serial">The serial number of the unit it is of; null where none was written down.</param>
public sealed record ClaimPhoto(string Hash, string Shows, string? Serial, DateTimeOffset At);
