namespace DxAssistant.Knowledge.Pictures;

/// <summary>The lines below a drawing that say what its signs mean, with the figures.</summary>
/// <remarks>The figures stand here and not beside the signs, so that no reading can make two of them overlap.</remarks>
internal static class Key
{
    private const double LineHeight = 19;
    private const double SignX = 12;
    private const double WordsX = 30;

    /// <summary>How much room the lines take on paper of a width.</summary>
    public static double Height(IEnumerable<(Sign Sign, string Words)> lines, double width) =>
        lines.Sum(line => Lines(line.Words, width).Count) * LineHeight + 6;

    public static void Draw(Pen pen, double top, IEnumerable<(Sign Sign, string Words)> lines)
    {
        double y = top + LineHeight - 4;
        foreach ((Sign sign, string words) in lines)
        {
            DrawSign(pen, sign, y - 5);
            foreach (string line in Lines(words, pen.Width))
            {
                pen.Text("ink", WordsX, y, line);
                y += LineHeight;
            }
        }
    }

    private static IReadOnlyList<string> Lines(string words, double width) =>
        TextSize.Wrapped(words, width - WordsX - 2, TextSize.Plain);

    private static void DrawSign(Pen pen, Sign sign, double y)
    {
        switch (sign)
        {
            case Sign.Found: pen.Circle("found", SignX, y, 5, " fill=\"currentColor\""); break;
            case Sign.Open: pen.Circle("ink", SignX, y, 4.5); break;
            case Sign.Band: Band(pen, SignX - 9, y - 6, SignX + 9, y + 6); break;
            case Sign.Doubt: Doubt(pen, SignX - 8, SignX + 8, y); break;
            case Sign.Line: pen.Line("ink", SignX - 9, y, SignX + 9, y); break;
            case Sign.Dashed: pen.Dashed("soft", SignX - 10, y, SignX + 10, y); break;
            case Sign.Odd: Rungs(pen, SignX - 8, y - 6, SignX + 8, y + 6); break;
            case Sign.Distance: Distance(pen, SignX - 9, SignX + 9, y); break;
        }
    }

    /// <summary>A stretch that is expected: shaded, with edges, so that it is seen without its colour.</summary>
    public static void Band(Pen pen, double left, double top, double right, double bottom) =>
        pen.Box("band", left, top, right, bottom).Line("edge", left, top, left, bottom)
            .Line("edge", right, top, right, bottom);

    /// <summary>How far a reading may be off, to both sides of it.</summary>
    public static void Doubt(Pen pen, double left, double right, double y) =>
        pen.Line("found", left, y, right, y).Line("found", left, y - 4, left, y + 4)
            .Line("found", right, y - 4, right, y + 4);

    /// <summary>A distance with an arrow at both ends.</summary>
    public static void Distance(Pen pen, double from, double to, double y)
    {
        double turn = Math.Sign(to - from) * Math.Min(5, Math.Abs(to - from) / 2);
        pen.Line("found", from, y, to, y)
            .Polyline("found", [(from + turn, y - 4), (from, y), (from + turn, y + 4)])
            .Polyline("found", [(to - turn, y - 4), (to, y), (to - turn, y + 4)]);
    }

    /// <summary>A bar with rungs: the odd one of a set.</summary>
    public static void Rungs(Pen pen, double left, double top, double right, double bottom)
    {
        pen.Box("off", left, top, right, bottom);
        for (double x = left + 4; x < right - 1; x += 4) pen.Line("off", x, top, x, bottom, " stroke-width=\"1\"");
    }
}
