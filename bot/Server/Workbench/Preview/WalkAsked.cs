namespace DxAssistant.Server.Workbench.Preview;

/// <summary>A point of a walk: where it begins and what was answered.</summary>
/// <param name="Seen">Checks done and repairs that did not help, in order.</param>
internal sealed record WalkAsked(string? Series, string? Symptom, AnswerGiven?[]? Seen);
