namespace DxAssistant.Knowledge.Judging;

/// <summary>Why readings that are possible one by one cannot be so together.</summary>
/// <param name="Pattern">The id of a phrase, without its <c>pattern-</c>.</param>
/// <param name="Which">The reading to doubt first; null when it can be any.</param>
internal sealed record Contradiction(string? Pattern, string? Which = null);
