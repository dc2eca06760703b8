using System.Globalization;

namespace DxAssistant.Knowledge.Content;

/// <summary>
/// Changes places that count characters as readers see them into places that count UTF-16 code units.
/// </summary>
public static class TextColumns
{
    /// <summary>Where a span begins and ends in its line, in UTF-16 code units from 0.</summary>
    /// <param name="line">The line the span is on.</param>
    /// <param name="span">A span; what lies beyond the line's end counts as its end.</param>
    public static (int Start, int End) InCodeUnits(string line, SourceSpan span)
    {
        int[] starts = StringInfo.ParseCombiningCharacters(line);
        int At(int character) => character < starts.Length ? starts[character] : line.Length;
        return (At(span.Column - 1), At(span.Column - 1 + span.Length));
    }

    /// <summary>The column as a reader counts it, from 1, of a UTF-16 code unit of a line, from 0.</summary>
    public static int AsSeen(string line, int codeUnit)
    {
        int[] starts = StringInfo.ParseCombiningCharacters(line);
        int at = Array.BinarySearch(starts, codeUnit);
        return (at >= 0 ? at : ~at) + 1;
    }
}
