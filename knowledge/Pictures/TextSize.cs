namespace DxAssistant.Knowledge.Pictures;

/// <summary>Sizes of text in units of the drawing, and how much room they take.</summary>
/// <remarks>A drawing of 300 units stands some 260 pixels wide on the narrowest phone.</remarks>
internal static class TextSize
{
    public const int Plain = 14;

    /// <summary>For the figures of a scale.</summary>
    public const int Scale = 13;

    public static double Width(string words, int size) => size * words.Sum(WidthOf);

    public static double Bold(string words, int size) => Width(words, size) * 1.12;

    /// <summary>The words in lines that fit a width; a word longer than that has a line of its own.</summary>
    public static IReadOnlyList<string> Wrapped(string words, double width, int size)
    {
        var lines = new List<string> { "" };
        foreach (string word in words.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string longer = lines[^1].Length == 0 ? word : $"{lines[^1]} {word}";
            bool belongs = IsUnit(word) && lines[^1].Length > 0 && char.IsAsciiDigit(lines[^1][^1]);
            if (lines[^1].Length == 0 || Width(longer, size) <= width) lines[^1] = longer;
            else if (belongs) Break(lines, word);
            else lines.Add(word);
        }

        return lines;
    }

    // A number and its unit go to the next line together.
    private static void Break(List<string> lines, string unit)
    {
        int space = lines[^1].LastIndexOf(' ');
        if (space < 0)
        {
            lines.Add(unit);
            return;
        }

        string number = lines[^1][(space + 1)..];
        lines[^1] = lines[^1][..space];
        lines.Add($"{number} {unit}");
    }

    private static bool IsUnit(string word) => word.Length <= 4 && !char.IsAsciiDigit(word[0]);

    // Of the size, for the widest of the faces the page may fall back to (DejaVu Sans), by kind of character.
    private static double WidthOf(char c) => c switch
    {
        'i' or 'j' or 'l' or '.' or ',' or ':' or ';' or '\'' or '|' or 'I' => 0.34,
        ' ' or 'f' or 'r' or 't' or '(' or ')' or '-' or '/' => 0.42,
        'm' or 'w' or 'W' or 'M' or '%' or '→' => 0.95,
        '+' or '±' or '<' or '>' or '≥' or '≤' or '×' or '÷' or '=' => 0.84,
        >= '0' and <= '9' => 0.64,
        >= 'a' and <= 'z' => 0.61,
        _ => 0.78,
    };
}
