namespace DxAssistant.Knowledge.Search;

/// <summary>A fault or symptom and how well it fits.</summary>
/// <param name="Score">0 to 1; 1 is the page's own wording.</param>
public sealed record MatchCandidate(string Id, double Score);
