namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>An entry that fits what was said.</summary>
/// <param name="Score">0 to 1; 1 is the entry's own wording.</param>
/// <param name="Probability">How probable the wording model holds it to be, among the entries of its kind.</param>
internal sealed record SearchHit(SearchEntry Entry, double Score, double Probability);
