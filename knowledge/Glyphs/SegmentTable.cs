using System.Collections.Frozen;

namespace DxAssistant.Knowledge.Glyphs;

/// <summary>Which segments a character lights on a seven-segment digit. Case matters: <c>b</c> is not
/// <c>B</c>.</summary>
/// <remarks>
/// Source: segment tables for letters and digits on encyclopedic pages (WikiChip, Wikipedia mirrors); nothing here is
/// standardized. K, M, W and X have no agreed shape. Lower-case a, e, h, i, j and the marks are common practice, no
/// source.
/// </remarks>
public static class SegmentTable
{
    private static readonly FrozenDictionary<char, Segments> Shapes = new (string Characters, string Lit)[]
    {
        ("0OD", "abcdef"), ("1", "bc"), ("2Zz", "abdeg"), ("3", "abcdg"), ("4", "bcfg"), ("5Ss", "acdfg"),
        ("6", "acdefg"), ("7", "abc"), ("8B", "abcdefg"), ("9g", "abcdfg"), ("A", "abcefg"), ("a", "abcdeg"),
        ("b", "cdefg"), ("C", "adef"), ("c", "deg"), ("d", "bcdeg"), ("Ee", "adefg"), ("Ff", "aefg"), ("G", "acdef"),
        ("H", "bcefg"), ("h", "cefg"), ("Il", "ef"), ("i", "c"), ("J", "bcde"), ("j", "bcd"), ("L", "def"),
        ("nN", "ceg"), ("o", "cdeg"), ("Pp", "abefg"), ("qQ", "abcfg"), ("rR", "eg"), ("tT", "defg"), ("UV", "bcdef"),
        ("uv", "cde"), ("yY", "bcdfg"), ("-", "g"), ("_", "d"), ("=", "dg"), ("°", "abfg"), (" ", ""),
    }.SelectMany(row => row.Characters.Select(c => (Character: c, Lit: SegmentsText.FromLetters(row.Lit))))
        .ToFrozenDictionary(row => row.Character, row => row.Lit);

    // Other ways makers draw the same character: 6 and 9 without their tails, 7 with a serif, 1 on the left.
    private static readonly FrozenDictionary<char, Segments> Variants = new Dictionary<char, Segments>
    {
        ['6'] = SegmentsText.FromLetters("cdefg"),
        ['9'] = SegmentsText.FromLetters("abcfg"),
        ['7'] = SegmentsText.FromLetters("abcf"),
        ['1'] = SegmentsText.FromLetters("ef"),
    }.ToFrozenDictionary();

    /// <summary>Every character with a shape, in ordinal order.</summary>
    public static IReadOnlyList<char> Characters { get; } = [.. Shapes.Keys.Order()];

    /// <summary>The usual shape; false if the character has none that is agreed on.</summary>
    public static bool TryGet(char character, out Segments lit) => Shapes.TryGetValue(character, out lit);

    /// <summary>Every shape in use for the character, the usual one first; empty if it has none.</summary>
    public static IReadOnlyList<Segments> ShapesOf(char character) =>
        !Shapes.TryGetValue(character, out Segments usual) ? []
        : Variants.TryGetValue(character, out Segments other) ? [usual, other] : [usual];

    /// <summary>True if the usual shapes of both light the same segments.</summary>
    public static bool SameShape(char one, char other) =>
        TryGet(one, out Segments left) && TryGet(other, out Segments right) && left == right;

    /// <summary>The fewest segments by which any shapes of the two differ, 0 to 7; null if one has no shape.</summary>
    public static int? NearestDistance(char one, char other) =>
        (from left in ShapesOf(one) from right in ShapesOf(other) select (int?)left.DistanceTo(right)).Min();
}
