namespace DxAssistant.Knowledge.Search;

/// <summary>The wording of a page that fits best.</summary>
/// <param name="Score">0 to 1.</param>
/// <param name="IsSame">It says the same, but for synonyms and small words.</param>
internal readonly record struct ClosestWording(string Text, double Score, bool IsSame)
{
    public static ClosestWording None { get; } = new("", 0, false);
}
