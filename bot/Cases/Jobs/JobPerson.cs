namespace DxAssistant.Cases.Jobs;

/// <summary>A person of a job.</summary>
/// <param name="Number">Counts from 1 within the job.</param>
/// <param name="Part">What they have to do with it.</param>
public sealed record JobPerson(int Number, string Part, string Name, string? Phone, DateTimeOffset At, string By);
