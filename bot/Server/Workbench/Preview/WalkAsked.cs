namespace DxAssistant.Server.Workbench.Preview;

/// <summary>A point of a walk: where it begins and what was answered.</summary>
/// <param name="Seen">Checks done and repairs that did not help, in order.</param>
/// <param name="PassOver">
/// Whether an answer that does not fit is told and passed over, for a screen that keeps its answers while the
/// pages change under it; else it is refused.
/// </param>
internal sealed record WalkAsked(string? Series, string? Symptom, AnswerGiven?[]? Seen, bool PassOver = false);
