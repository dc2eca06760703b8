namespace DxAssistant.Cases.Calls;

/// <summary>Something written down while a caller was on the line or on hold. Not part of the evidence.</summary>
public sealed record CallNote(DateTimeOffset At, string By, string Text);
