namespace DxAssistant.Server.Workbench.Preview;

/// <summary>A point of a walk: where it begins and what was answered.</summary>
/// <param name="Seen">Checks done, with the outcome, in order.</param>
/// <param name="Failed">Repairs that did not help.</param>
internal sealed record WalkAsked(string Series, string Symptom, AnswerGiven[]? Seen, string[]? Failed);
