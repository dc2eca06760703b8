using System.Buffers;
using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>The text of a page and where its lines begin.</summary>
internal sealed partial class SourceText
{
    // All controls but tab and line feed, and the sign that a decoder puts for bytes it could not read.
    private static readonly SearchValues<char> Unreadable = SearchValues.Create(
        [.. Enumerable.Range(0, 0xA0).Select(code => (char)code)
            .Where(c => char.IsControl(c) && c is not ('\t' or '\n')), '\uFFFD']);

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
        FirstUnreadable = text.AsSpan().IndexOfAny(Unreadable);
        ToDos = [.. ToDo().Matches(text).Select(left => Trim(new TextSpan(left.Index, left.Length)))];
    }

    public string Path { get; }

    public string Text { get; }

    /// <summary>The first character that nobody can read; −1 when there is none.</summary>
    public int FirstUnreadable { get; }

    /// <summary>True for what was not saved as UTF-8 text at all: its zeroes give it away.</summary>
    public bool IsNoText => FirstUnreadable >= 0 && Text.Contains('\0', StringComparison.Ordinal);

    /// <summary>The places that a new page left for its author, each to the end of its line or cell.</summary>
    public ImmutableArray<TextSpan> ToDos { get; }

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

    [GeneratedRegex(@"\bT[oO] ?[dD][oO]:[^|\n""]*", RegexOptions.CultureInvariant)]
    private static partial Regex ToDo();

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
