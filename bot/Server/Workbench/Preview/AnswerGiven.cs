namespace DxAssistant.Server.Workbench.Preview;

/// <summary>What a check showed.</summary>
internal sealed record AnswerGiven(string Check, string Outcome);
