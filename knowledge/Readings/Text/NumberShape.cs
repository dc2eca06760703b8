namespace DxAssistant.Knowledge.Readings.Text;

/// <summary>Where a number in digits ends.</summary>
internal static class NumberShape
{
    private const string Separators = ".,'";

    /// <summary>The end of the number that begins at a place: digits, separators between them, an exponent.</summary>
    public static int End(string text, int start)
    {
        int at = start;
        while (IsDigit(text, at) || (at < text.Length && IsSeparator(text[at]) && IsDigit(text, at + 1)))
        {
            at++;
        }
        return ExponentEnd(text, start, at);
    }

    /// <summary>True for 4k7, 1M2, 0R5: one letter of a prefix or unit between few digits.</summary>
    /// <param name="letter">Where the letter stands.</param>
    /// <param name="tail">The end of the digits after it.</param>
    public static bool IsLetterForPoint(string text, int start, int letter, out int tail)
    {
        tail = letter + 1;
        while (IsDigit(text, tail))
        {
            tail++;
        }
        bool ends = tail >= text.Length || text[tail] == 'Ω' || !char.IsLetterOrDigit(text[tail]);
        return ends && letter - start <= 3 && tail - letter is 2 or 3 or 4
            && "kKmMrRvV".Contains(text[letter], StringComparison.Ordinal)
            && text.AsSpan(start, letter - start).IndexOfAnyExceptInRange('0', '9') < 0
                && !(tail < text.Length - 1 && text[tail] is '-' or '/' or '_' or '.'
                && IsAlphanumeric(text, tail + 1));
    }

    // 1.2e3 and 1e-6 are numbers; 1E5 could as well be a code.
    private static int ExponentEnd(string text, int start, int at)
    {
        bool sign = at + 1 < text.Length && text[at + 1] is '-' or '+';
        bool point = text.AsSpan(start, at - start).Contains('.');
        if (at >= text.Length || text[at] is not ('e' or 'E') || !(sign || point)
            || !IsDigit(text, at + (sign ? 2 : 1)))
        {
            return at;
        }
        int end = at + (sign ? 2 : 1);
        while (IsDigit(text, end))
        {
            end++;
        }
        return end;
    }

    private static bool IsSeparator(char c) => c == Folding.GroupSpace
        || Separators.Contains(c, StringComparison.Ordinal);

    private static bool IsDigit(string text, int at) => at < text.Length && char.IsAsciiDigit(text[at]);

    private static bool IsAlphanumeric(string text, int at) => at < text.Length && char.IsLetterOrDigit(text[at]);
}
