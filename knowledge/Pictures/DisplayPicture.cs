using System.Globalization;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Glyphs;

namespace DxAssistant.Knowledge.Pictures;

/// <summary>What a unit shows, drawn as it glows: digits of seven segments, or a lamp and its pulses.</summary>
public static class DisplayPicture
{
    private const double DigitWidth = 34;
    private const double DigitHeight = 60;
    private const double Step = 54;
    private const double PulsesInARow = 10;

    // As series pages write it where several lamps make a code.
    private const string SeveralLamps = "lamps";

    /// <summary>Draws a code of a series.</summary>
    public static Drawn Of(DisplayCode code, IPictureWords words)
    {
        bool isCounted = LampPattern.TryRead(code.Look, out LampPattern? lamps);
        bool isLamp = isCounted || code.Display == SeveralLamps;
        string phrase = isCounted ? "picture-lamp" : "picture-display";
        string text = words.Say(phrase, ("code", code.Display), ("look", code.Look));
        bool flashes = code.Look == "flashing";
        string svg = isCounted ? Lamps(lamps!, text) : isLamp
            ? Together(flashes, text)
            : Digits(code.Display, flashes, text);
        return new Drawn(isLamp ? "lamp" : "display", svg, phrase, text);
    }

    // Two lamps that do the same without a count: on all the time, or on and off in step.
    private static string Together(bool flashes, string text)
    {
        const double High = 60, Start = 68, Wide = 20.4;
        const int Lamps = 2, Pulses = 9;
        var pen = new Pen(300, Lamps * High);
        for (double top = 0; top < Lamps * High; top += High)
        {
            Bulb(pen, top);
            double foot = top + 40;
            pen.Polyline("ink", flashes
                ? Beats(Start, Wide, foot, Pulses)
                : [(Start - 4, foot - 20), (Start + (Pulses * Wide), foot - 20)]);
        }

        return pen.Finish("lamp", text, text);
    }

    private static string Digits(string code, bool flashes, string text)
    {
        Display display = Display.Showing(code);
        double glass = 26 + display.Digits.Length * Step;
        var pen = new Pen(glass + 60, 112);
        pen.Box("glass", 30, 14, 30 + glass, 98, " rx=\"6\"");
        double left = 30 + 23;
        foreach (Segments lit in display.Digits)
        {
            Digit(pen, left, 26, lit, flashes);
            left += Step;
        }

        if (flashes) Rays(pen, 30, 30 + glass, 56);
        return pen.Finish("display", text, text);
    }

    private static string Lamps(LampPattern lamps, string text)
    {
        var pen = new Pen(300, lamps.Lamps.Sum(High));
        double top = 0;
        foreach (LampCount lamp in lamps.Lamps)
        {
            Lamp(pen, top, lamp);
            top += High(lamp);
        }

        return pen.Finish("lamp", text, text);
    }

    // Beside its colour a lamp bears its name.
    private static void Lamp(Pen pen, double top, LampCount lamp)
    {
        Bulb(pen, top);
        if (lamp.Lamp.Length > 0) pen.Text("ink", 64, top + 14, lamp.Lamp);
        for (int row = 0; row < Rows(lamp); row++)
            Pulses(pen, top, row, (int)Math.Min(PulsesInARow, lamp.Blinks - row * PulsesInARow));
    }

    private static void Bulb(Pen pen, double top) => pen.Box("glass", 6, top + 6, 54, top + 54, " rx=\"6\"")
        .Circle("lit", 30, top + 30, 11, " fill=\"currentColor\"");

    private static int Rows(LampCount lamp) => (int)Math.Ceiling(lamp.Blinks / PulsesInARow);

    private static double High(LampCount lamp) => Math.Max(60, 24 + Rows(lamp) * 30);

    // Time runs to the right: on, off, on, off; at the end of a row stands how many there were, so that nobody has to
    // count.
    private static void Pulses(Pen pen, double top, int row, int count)
    {
        const double Start = 68, Wide = 20.4;
        double foot = top + 40 + row * 30;
        double end = Start + count * Wide;
        pen.Polyline("ink", Beats(Start, Wide, foot, count));
        pen.Text("ink", end + 4, foot - 4, (row * PulsesInARow + count).ToString("0", CultureInfo.InvariantCulture),
            bold: true);
    }

    private static (double X, double Y)[] Beats(double start, double wide, double foot, int count)
    {
        var corners = new List<(double X, double Y)> { (start - 4, foot) };
        for (int pulse = 0; pulse < count; pulse++)
        {
            double left = start + pulse * wide;
            corners.AddRange([(left, foot), (left, foot - 20), (left + 11, foot - 20), (left + 11, foot)]);
        }

        return [.. corners, (start + count * wide, foot)];
    }

    // Lit segments are full; dark ones are outlines, so that a shape is seen and not only a colour.
    private static void Digit(Pen pen, double x, double y, Segments lit, bool flashes)
    {
        foreach ((Segments segment, (double X, double Y)[] corners) in Shapes)
        {
            bool on = lit.HasFlag(segment);
            pen.Polygon(on ? flashes ? "lit flash" : "lit" : "dark",
                corners.Select(corner => (x + corner.X, y + corner.Y)), on ? " fill=\"currentColor\"" : "");
        }
    }

    // Short strokes around what flashes.
    private static void Rays(Pen pen, double left, double right, double middle)
    {
        foreach (double y in new[] { middle - 18, middle, middle + 18 })
        {
            double lean = (y - middle) / 6;
            pen.Line("ink", left - 8, y, left - 20, y + lean).Line("ink", right + 8, y, right + 20, y + lean);
        }
    }

    private static readonly (Segments Segment, (double X, double Y)[] Corners)[] Shapes =
    [
        (Segments.A, Flat(0)), (Segments.B, Upright(DigitWidth, 0)), (Segments.C, Upright(DigitWidth, DigitHeight / 2)),
        (Segments.D, Flat(DigitHeight)), (Segments.E, Upright(0, DigitHeight / 2)), (Segments.F, Upright(0, 0)),
        (Segments.G, Flat(DigitHeight / 2)),
    ];

    private static (double, double)[] Flat(double y) =>
        [(2, y), (6, y - 4), (DigitWidth - 6, y - 4), (DigitWidth - 2, y), (DigitWidth - 6, y + 4), (6, y + 4)];

    private static (double, double)[] Upright(double x, double y) =>
        [(x, y + 2), (x + 4, y + 6), (x + 4, y + DigitHeight / 2 - 6), (x, y + DigitHeight / 2 - 2),
            (x - 4, y + DigitHeight / 2 - 6), (x - 4, y + 6)];
}
