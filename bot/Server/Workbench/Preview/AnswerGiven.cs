namespace DxAssistant.Server.Workbench.Preview;

/// <summary>What a check showed, or a repair that did not help.</summary>
/// <param name="Check">The check; null for a repair.</param>
/// <param name="Repair">The repair; null for a check.</param>
internal sealed record AnswerGiven(string? Check, string? Outcome, string? Repair = null);
