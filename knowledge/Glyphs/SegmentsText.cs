using System.Numerics;

namespace DxAssistant.Knowledge.Glyphs;

/// <summary>Segments as letters, and how far two shapes are apart.</summary>
public static class SegmentsText
{
    private const string Letters = "abcdefg";

    /// <summary>The lit segments as letters in the order a to g; empty for a dark digit.</summary>
    public static string ToLetters(this Segments lit) =>
        string.Concat(Letters.Where((_, place) => ((int)lit >> place & 1) == 1));

    /// <summary>The segments that one of the two lights and the other does not.</summary>
    public static Segments Differing(this Segments one, Segments other) => one ^ other;

    /// <summary>How many segments differ, 0 to 7.</summary>
    public static int DistanceTo(this Segments one, Segments other) => BitOperations.PopCount((uint)(one ^ other));

    /// <summary>Reads letters a to g, in any order.</summary>
    /// <exception cref="ArgumentException"><paramref name="letters"/> holds anything else.</exception>
    public static Segments FromLetters(string letters)
    {
        var lit = Segments.None;
        foreach (char letter in letters)
        {
            int place = Letters.IndexOf(letter, StringComparison.Ordinal);
            if (place < 0)
            {
                throw new ArgumentException($"'{letter}' is not a segment; segments are a to g", nameof(letters));
            }
            lit |= (Segments)(1 << place);
        }
        return lit;
    }
}
