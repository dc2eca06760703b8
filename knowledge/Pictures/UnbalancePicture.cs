using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Knowledge.Pictures;

/// <summary>Three line voltages as a triangle, the even one behind it, and their unbalance on a scale.</summary>
internal sealed class UnbalancePicture
{
    private const double Middle = 150;
    private const double BaseLine = 122;

    private readonly Caption _caption;
    private readonly Triangle _triangle;
    private readonly double _mean;
    private readonly double _size;

    private UnbalancePicture(Caption caption, Triangle triangle)
    {
        _caption = caption;
        _triangle = triangle;
        double[] sides = [.. caption.Facts.Readings.Select(reading => reading.Value)];
        _mean = sides.Average();
        _size = Math.Min(112 / _mean, Math.Min(170 / sides.Max(), 106 / Math.Max(triangle.Apex.Y, 1e-9)));
    }

    /// <summary>Draws it; null when the three voltages are absent or make no triangle.</summary>
    public static Drawn? Draw(Caption caption)
    {
        var sides = caption.Facts.Readings;
        return caption.Facts.Judgement.Verdict != VerdictKind.Absent
            && Triangle.Of(sides[0].Value, sides[1].Value, sides[2].Value) is { } triangle
            ? new UnbalancePicture(caption, triangle).Draw()
            : null;
    }

    private Drawn Draw()
    {
        ExpectedBand band = _caption.Facts.Expected[0];
        string found = Figures.Of(band.Found!);
        (Sign, string)[] key =
        [
            (Sign.Found, $"{band.Name} {found}"), .. _caption.Doubt(band), _caption.Expected(band), .. _caption.Odd,
            (Sign.Dashed, _caption.Words.Say("picture-key-even")),
        ];
        var pen = new Pen(300, 150 + Strip.Height + Key.Height(key, 300));
        DrawGhost(pen);
        DrawSides(pen);
        Strip.Draw(pen, 148, band);
        Key.Draw(pen, 148 + Strip.Height, key);
        return _caption.Finish(pen, "triangle", "picture-triangle", ("readings", _caption.Facts.AllLabelled),
            ("name", band.Name), ("found", found), ("side", _caption.Side), ("band", Figures.Limits(band)));
    }

    private (double X, double Y) Left => (Middle - _triangle.Base * _size / 2, BaseLine);

    private (double X, double Y) Right => (Middle + _triangle.Base * _size / 2, BaseLine);

    private (double X, double Y) Apex =>
        (Left.X + _triangle.Apex.X * _size, BaseLine - _triangle.Apex.Y * _size);

    private void DrawGhost(Pen pen)
    {
        double half = _mean * _size / 2;
        (double X, double Y)[] even =
            [(Middle - half, BaseLine), (Middle + half, BaseLine), (Middle, BaseLine - half * Math.Sqrt(3))];
        pen.Polygon("soft", even, " stroke-dasharray=\"5 4\"");
    }

    private void DrawSides(Pen pen)
    {
        Side(pen, 0, Left, Right);
        Side(pen, 1, Right, Apex);
        Side(pen, 2, Apex, Left);
        foreach ((double x, double y) in new[] { Left, Right, Apex }) pen.Dot("ink", x, y, 3.5);
        Label(pen, 0, Middle, BaseLine + 18, Anchor.Middle);
        Label(pen, 1, (Right.X + Apex.X) / 2 + 16, Beside(Right.Y), Anchor.Start);
        Label(pen, 2, (Left.X + Apex.X) / 2 - 16, Beside(Left.Y), Anchor.End);
    }

    // Above the base, however flat the triangle is.
    private double Beside(double foot) => Math.Min((foot + Apex.Y) / 2 - 4, BaseLine - 12);

    private void Side(Pen pen, int place, (double X, double Y) from, (double X, double Y) to) =>
        pen.Line(IsOdd(place) ? "off" : "ink", from.X, from.Y, to.X, to.Y,
            IsOdd(place) ? " stroke-width=\"5\" stroke-dasharray=\"2 3\" stroke-linecap=\"butt\"" : "");

    // Beside its side; a narrow triangle pushes no label off the paper.
    private void Label(Pen pen, int place, double x, double y, Anchor anchor)
    {
        string words = _caption.Facts.Labelled(place);
        double wide = TextSize.Bold(words, TextSize.Plain);
        double fit = anchor switch
        {
            Anchor.Start => Math.Min(x, pen.Width - wide),
            Anchor.End => Math.Max(x, wide),
            _ => x,
        };
        pen.Text(IsOdd(place) ? "off" : "ink", fit, y, words, anchor, bold: IsOdd(place));
    }

    private bool IsOdd(int place) => _caption.Facts.Judgement.OddOneOut == _caption.Facts.Label(place);
}
