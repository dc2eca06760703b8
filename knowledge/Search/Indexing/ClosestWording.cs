namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>How well the closest wording of a page fits.</summary>
/// <param name="Score">0 to 1.</param>
/// <param name="IsSame">It says the same, but for synonyms and small words.</param>
internal readonly record struct ClosestWording(double Score, bool IsSame);
