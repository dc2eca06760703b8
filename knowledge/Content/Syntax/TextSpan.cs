namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>A stretch of a page's text.</summary>
/// <param name="Start">Offset of its first character in the page, from 0.</param>
/// <param name="Length">Characters, 0 or more.</param>
internal readonly record struct TextSpan(int Start, int Length)
{
    public int End => Start + Length;

    public static TextSpan Between(int start, int end) => new(start, Math.Max(0, end - start));
}
