namespace DxAssistant.Knowledge.Pictures;

/// <summary>Sizes of text in units of the drawing, and how much room they take.</summary>
/// <remarks>A drawing of 300 units stands some 260 pixels wide on the narrowest phone.</remarks>
internal static class TextSize
{
    public const int Plain = 14;

    /// <summary>For the figures of a scale.</summary>
    public const int Scale = 13;

    public static double Width(string words, int size) => size * Added(0, words);

    public static double Bold(string words, int size) => Width(words, size) * 1.12;

    /// <summary>The words in lines that fit a width; a word longer than that has a line of its own.</summary>
    public static IReadOnlyList<string> Wrapped(string words, double width, int size)
    {
        var lines = new List<string> { "" };
        double room = 0;
        foreach (string word in words.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string last = lines[^1];
            double longer = last.Length == 0 ? Added(0, word) : Added(Added(room, " "), word);
            if (last.Length == 0 || size * longer <= width)
            {
                (lines[^1], room) = (last.Length == 0 ? word : $"{last} {word}", longer);
                continue;
            }

            if (IsUnit(word) && char.IsAsciiDigit(last[^1])) Break(lines, word);
            else lines.Add(word);
            room = Added(0, lines[^1]);
        }

        return lines;
    }

    // The width so far, of size 1, and that of more characters.
    private static double Added(double width, string more)
    {
        foreach (char c in more) width += WidthOf(c);
        return width;
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
