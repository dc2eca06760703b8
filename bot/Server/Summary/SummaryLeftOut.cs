namespace DxAssistant.Server.Summary;

/// <summary>One check that was left out.</summary>
/// <param name="Reason">As it stands on its button.</param>
internal sealed record SummaryLeftOut(string Title, string Reason);
