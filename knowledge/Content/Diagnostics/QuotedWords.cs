using System.Globalization;

namespace DxAssistant.Knowledge.Content;

/// <summary>
/// A stretch of a line between <c>⟦</c> and <c>⟧</c>, as in the book of rules, with what stands around it.
/// </summary>
internal static class QuotedWords
{
    // Characters as seen: enough around to find the place, and no more of what is marked than fits a line of a log.
    private const int Around = 30, MostMarked = 72;

    public static string Of(string line, SourceSpan at)
    {
        // A log is to show words, not to obey them.
        var seen = new StringInfo(string.Concat(line.Select(c => char.IsControl(c) ? ' ' : c)).TrimEnd());
        int length = seen.LengthInTextElements, start = Math.Min(at.Column - 1, length);
        int end = Math.Min(start + at.Length, length);
        return Part(seen, Math.Max(0, start - Around), start, start > Around, false)
            + $"⟦{Part(seen, start, Math.Min(end, start + MostMarked), false, end > start + MostMarked)}⟧"
            + Part(seen, end, Math.Min(length, end + Around), false, length > end + Around);
    }

    private static string Part(StringInfo seen, int from, int to, bool goesOnBefore, bool goesOnAfter) =>
        (goesOnBefore ? "…" : "") + (to > from ? seen.SubstringByTextElements(from, to - from) : "")
            + (goesOnAfter ? "…" : "");
}
