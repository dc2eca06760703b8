namespace DxAssistant.Knowledge.Search;

/// <summary>An entry that fits what was said.</summary>
/// <param name="Score">0 to 1; 1 is the entry's own wording.</param>
/// <param name="Closest">The phrase of the entry that fits best; empty if none does.</param>
internal sealed record SearchHit(SearchEntry Entry, double Score, string Closest);
