namespace DxAssistant.Knowledge.Pictures;

/// <summary>Sizes of text in units of the drawing, and how much room they take.</summary>
/// <remarks>A drawing of 300 units stands some 260 pixels wide on the narrowest phone.</remarks>
internal static class TextSize
{
    public const int Plain = 14;

    /// <summary>For the figures of a scale.</summary>
    public const int Scale = 13;

    // Of the size, for the widest of the faces the page may fall back to; measured, not exact.
    private const double WidthOfCharacter = 0.6;

    public static double Width(string words, int size) => words.Length * size * WidthOfCharacter;

    public static double Bold(string words, int size) => Width(words, size) * 1.12;

    /// <summary>The words in lines that fit a width; a word longer than that has a line of its own.</summary>
    public static IReadOnlyList<string> Wrapped(string words, double width, int size)
    {
        var lines = new List<string> { "" };
        foreach (string word in words.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string longer = lines[^1].Length == 0 ? word : $"{lines[^1]} {word}";
            if (lines[^1].Length == 0 || Width(longer, size) <= width) lines[^1] = longer;
            else lines.Add(word);
        }

        return lines;
    }
}
