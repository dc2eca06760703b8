namespace DxAssistant.Cases.Jobs;

/// <summary>A unit of a job; null where nothing was told.</summary>
/// <param name="Number">Counts from 1 within the job.</param>
public sealed record JobUnit(
    int Number, string? Series, string? Model, string? Serial, DateOnly? Installed, string? Site, DateTimeOffset At,
    string By);
