using System.Collections.Immutable;
using DxAssistant.Knowledge.Glyphs;

namespace DxAssistant.Conversation.Understanding.Whole;

/// <summary>
/// Keeps the lamps of one blink code together: "red three times and green once" is one thing that is told.
/// </summary>
internal static class LampPieces
{
    public static ImmutableArray<string> Joined(ImmutableArray<string> pieces)
    {
        var joined = new List<string>();
        foreach (string piece in pieces)
        {
            if (joined.Count > 0 && IsOneCode(joined[^1], piece)) joined[^1] = $"{joined[^1]}, {piece}";
            else joined.Add(piece);
        }

        return [.. joined];
    }

    private static bool IsOneCode(string first, string second) =>
        Lamps($"{first}, {second}") is >= 2 and int both && both > Lamps(first) && both > Lamps(second);

    private static int Lamps(string text) =>
        GlyphReader.TryFind(text, out GlyphReading? reading) && reading.Canonical.Length == 0
            ? reading.Lamps.Length
            : 0;
}
