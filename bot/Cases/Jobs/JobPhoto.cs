namespace DxAssistant.Cases.Jobs;

/// <summary>A photo of a job.</summary>
/// <param name="Hash">SHA-256 of its bytes, in lower-case hexadecimal.</param>
/// <param name="Type">The media type.</param>
/// <param name="Shows">What is on it.</param>
/// <param name="Unit">The number of the unit.</param>
public sealed record JobPhoto(string Hash, string Type, long Bytes, string Shows, int Unit, DateTimeOffset At,
    string By);
