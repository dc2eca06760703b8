namespace DxAssistant.Cases.Jobs;

/// <summary>A note about a job.</summary>
public sealed record JobNote(string Text, DateTimeOffset At, string By);
