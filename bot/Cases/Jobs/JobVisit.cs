namespace DxAssistant.Cases.Jobs;

/// <summary>One stay at the unit, or one call.</summary>
/// <param name="Number">Counts from 1 within the job.</param>
/// <param name="Ended">Null while it goes on.</param>
public sealed record JobVisit(int Number, DateTimeOffset Begun, DateTimeOffset? Ended, string By);
