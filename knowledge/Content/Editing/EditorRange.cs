using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Editing;

/// <summary>
/// A stretch of a page as editors count it: lines and UTF-16 code units from 0, the end not included.
/// </summary>
public readonly record struct EditorRange(int StartLine, int StartCharacter, int EndLine, int EndCharacter)
{
    internal static EditorRange Of(string text, TextSpan span)
    {
        (int startLine, int startCharacter) = Place(text, span.Start);
        (int endLine, int endCharacter) = Place(text, span.End);
        return new EditorRange(startLine, startCharacter, endLine, endCharacter);
    }

    /// <summary>The range of a span that counts characters as readers see them.</summary>
    public static EditorRange Of(string text, SourceSpan span)
    {
        string line = text.Split('\n').ElementAtOrDefault(span.Line - 1) ?? "";
        (int start, int end) = TextColumns.InCodeUnits(line, span);
        return new EditorRange(span.Line - 1, start, span.Line - 1, end);
    }

    /// <summary>The offset in a text of a line and character; the nearest one there is.</summary>
    internal static int Offset(string text, int line, int character)
    {
        int start = 0;
        for (; line > 0 && text.IndexOf('\n', start) is >= 0 and int end; line--) start = end + 1;
        int stop = text.IndexOf('\n', start);
        return Math.Min(start + character, stop < 0 ? text.Length : stop);
    }

    private static (int Line, int Character) Place(string text, int offset)
    {
        offset = Math.Clamp(offset, 0, text.Length);
        ReadOnlySpan<char> before = text.AsSpan(0, offset);
        return (before.Count('\n'), offset - (before.LastIndexOf('\n') + 1));
    }
}
