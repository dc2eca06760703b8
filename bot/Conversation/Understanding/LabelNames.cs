using System.Collections.Immutable;

namespace DxAssistant.Conversation.Understanding;

/// <summary>
/// Compares the labels of readings as people write them: G, PE and earth are ground, and either end may come first.
/// </summary>
internal static class LabelNames
{
    private static readonly ImmutableHashSet<string> Grounds = ["g", "gnd", "pe", "e", "earth", "ground"];

    public static bool Agree(string left, string right) =>
        Ends(left).SequenceEqual(Ends(right), StringComparer.Ordinal);

    private static IEnumerable<string> Ends(string label) => PlainWords.Of(label)
        .Select(end => Grounds.Contains(end) ? "ground" : end)
        .Order(StringComparer.Ordinal);
}
