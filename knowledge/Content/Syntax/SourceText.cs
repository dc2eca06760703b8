using System.Globalization;

namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>The text of a page and where its lines begin.</summary>
internal sealed class SourceText
{
    private readonly int[] lineStarts;
    private readonly Dictionary<int, int[]> characters = [];

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
        int before = CharactersBefore(index, start);
        return new SourceSpan(Path, index + 1, before + 1, CharactersBefore(index, end) - before);
    }

    /// <summary>An error at a place of the text.</summary>
    public Diagnostic Error(string name, TextSpan at, string message, Remedy? remedy)
    {
        SourceSpan place = At(at);
        return new Diagnostic(name, Severity.Error, place, message, remedy?.Help)
        {
            Mend = remedy?.Instead is null ? null : remedy.For(Slice(at), place),
        };
    }

    /// <summary>The offset of a line and column that count from 1; the nearest one there is.</summary>
    public int Offset(int line, int column)
    {
        int start = lineStarts[Math.Clamp(line - 1, 0, lineStarts.Length - 1)];
        return Math.Clamp(start + column - 1, 0, Text.Length);
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

    // Counted once a line: a faulty line can be long and have a thousand faults.
    private int[] CharactersOf(int line)
    {
        if (!characters.TryGetValue(line, out int[]? starts))
        {
            int end = line + 1 < lineStarts.Length ? lineStarts[line + 1] - 1 : Text.Length;
            starts = StringInfo.ParseCombiningCharacters(Text[lineStarts[line]..end]);
            characters.Add(line, starts);
        }

        return starts;
    }

    // How many characters of the line begin before an offset of the page.
    private int CharactersBefore(int line, int offset)
    {
        int[] starts = CharactersOf(line);
        int at = Array.BinarySearch(starts, offset - lineStarts[line]);
        return at >= 0 ? at : ~at;
    }
}
