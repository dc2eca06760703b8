using System.Globalization;

namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>The text of a page and where its lines begin.</summary>
internal sealed class SourceText
{
    private readonly int[] lineStarts;

    public SourceText(string path, string text)
    {
        Path = path;
        Text = text;
        var starts = new List<int> { 0 };
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] == '\n')
            {
                starts.Add(i + 1);
            }
        }

        lineStarts = [.. starts];
    }

    public string Path { get; }

    public string Text { get; }

    /// <summary>Line and column of a span; one that runs over several lines is cut at the end of its first.</summary>
    public SourceSpan At(TextSpan span)
    {
        int start = Math.Clamp(span.Start, 0, Text.Length);
        int index = Array.BinarySearch(lineStarts, start);
        index = index >= 0 ? index : ~index - 1;
        int lineEnd = index + 1 < lineStarts.Length ? lineStarts[index + 1] - 1 : Text.Length;
        int end = Math.Clamp(span.End, start, lineEnd < start ? start : lineEnd);
        return new SourceSpan(Path, index + 1, Count(lineStarts[index], start) + 1, Count(start, end));
    }

    public string Slice(TextSpan span) => Text.Substring(span.Start, span.Length);

    /// <summary>The span without white space at its ends.</summary>
    public TextSpan Trim(TextSpan span)
    {
        int start = span.Start;
        int end = span.End;
        while (start < end && char.IsWhiteSpace(Text[start]))
        {
            start++;
        }

        while (end > start && char.IsWhiteSpace(Text[end - 1]))
        {
            end--;
        }

        return TextSpan.Between(start, end);
    }

    // A line without marks or emoji counts in one step; the rest is counted the slow, right way.
    private int Count(int start, int end) =>
        new StringInfo(Text[start..end]).LengthInTextElements;
}
