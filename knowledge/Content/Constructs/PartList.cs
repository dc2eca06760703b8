using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>Reads the parts of a class: names with commas between.</summary>
internal static class PartList
{
    /// <summary>The class of all parts that stand in none.</summary>
    public const string EveryOther = "every other part";

    public static ImmutableArray<string> Read(string text) =>
        [.. text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];
}
