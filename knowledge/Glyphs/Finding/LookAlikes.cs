using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Glyphs.Finding;

/// <summary>The codes that a code can be mistaken for.</summary>
internal static class LookAlikes
{
    private const string Characters = "0123456789ABCDEFGHIJLNOPQRSTUY";

    private const int LongestCode = 6;

    /// <summary>Codes of the same look and those one segment away, nearest first, then ordinal; none for a code with no
    /// shape.</summary>
    public static ImmutableArray<string> Of(string canonical)
    {
        if (canonical.Length is 0 or > LongestCode || canonical.All(c => c == '-'))
        {
            return [];
        }
        var nearest = new Dictionary<string, int>(StringComparer.Ordinal);
        for (int place = 0; place < canonical.Length; place++)
        {
            foreach (char other in Characters)
            {
                string code = CanonicalForm.Of(string.Concat(canonical.AsSpan(0, place), other.ToString(),
                    canonical.AsSpan(place + 1)));
                if (code != canonical && GlyphShapes.Distance(canonical[place], code[place]) is var distance and <= 1)
                {
                    nearest[code] = distance;
                }
            }
        }
        return [.. nearest.OrderBy(pair => pair.Value).ThenBy(pair => pair.Key, StringComparer.Ordinal).Select(pair =>
            pair.Key)];
    }
}
