namespace DxAssistant.Knowledge.Glyphs;

/// <summary>Compares codes by how they look on a display, whatever the case in which they were typed.</summary>
public static class GlyphShapes
{
    private const int FarApart = 99;

    private static readonly Segments[][] Shapes = [.. Enumerable.Range(0, 128).Select(code => (char)code)
        .Select(typed => new[] { typed, char.ToLowerInvariant(typed), char.ToUpperInvariant(typed) }
            .SelectMany(SegmentTable.ShapesOf).Distinct().ToArray())];

    /// <summary>The two light the same segments, or can.</summary>
    public static bool Same(string one, string other) => Distance(one, other) == 0;

    /// <summary>One segment of one digit differs.</summary>
    public static bool OneSegmentApart(string one, string other) => Distance(one, other) == 1;

    /// <summary>Segments that differ over all digits, at the closest shapes in use; null if the codes are of different
    /// length.</summary>
    public static int? Distance(string one, string other)
    {
        string left = Plain(one);
        string right = Plain(other);
        return left.Length != right.Length || left.Length == 0 ? null : left.Zip(right, Distance).Sum();
    }

    /// <summary>The most segments of one digit that are dark in what was seen; null if it lights one that the code does
    /// not.</summary>
    internal static int? Darkened(string seen, string code)
    {
        string left = Plain(seen);
        string right = Plain(code);
        return left.Length != right.Length || left.Length == 0 ? null
            : left.Zip(right, Darkened).Aggregate((int?)0, (sum, dark) => sum + dark);
    }

    /// <summary>A code without the marks people put into it; dashes stay if they are all of it.</summary>
    internal static string Plain(string code)
    {
        string letters = new([.. code.Where(char.IsLetterOrDigit)]);
        return letters.Length > 0 ? letters : new string([.. code.Where(c => c == '-')]);
    }

    /// <summary>Every shape that a typed character can stand for: people type b4 as B4.</summary>
    internal static ReadOnlySpan<Segments> ShapesOf(char typed) => typed < Shapes.Length ? Shapes[typed] : [];

    internal static int Distance(char one, char other)
    {
        int closest = char.ToUpperInvariant(one) == char.ToUpperInvariant(other) ? 0 : FarApart;
        foreach (Segments left in ShapesOf(one))
        {
            foreach (Segments right in ShapesOf(other))
            {
                closest = Math.Min(closest, left.DistanceTo(right));
            }
        }
        return closest;
    }

    private static int? Darkened(char seen, char code)
    {
        int? dark = char.ToUpperInvariant(seen) == char.ToUpperInvariant(code) ? 0 : null;
        foreach (Segments left in ShapesOf(seen))
        {
            foreach (Segments right in ShapesOf(code))
            {
                bool inside = (left & ~right) == Segments.None;
                dark = inside && !(dark <= left.DistanceTo(right)) ? left.DistanceTo(right) : dark;
            }
        }
        return dark;
    }
}
