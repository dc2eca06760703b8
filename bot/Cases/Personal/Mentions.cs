namespace DxAssistant.Cases.Personal;

/// <summary>Whether words speak of somebody.</summary>
internal static class Mentions
{
    // Shorter runs of digits stand in readings and dates.
    private const int ShortestNumber = 5;

    /// <param name="about">A name, a telephone number or a serial number; numbers however they are spaced.</param>
    public static bool Are(string words, string about)
    {
        if (about.Trim() is not { Length: > 0 } wanted) return false;
        if (words.Contains(wanted, StringComparison.OrdinalIgnoreCase)) return true;
        string number = Digits(wanted);
        return number.Length >= ShortestNumber && !wanted.Any(char.IsLetter)
            && Digits(words).Contains(number, StringComparison.Ordinal);
    }

    private static string Digits(string text) => string.Concat(text.Where(char.IsAsciiDigit));
}
