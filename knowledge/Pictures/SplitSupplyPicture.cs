using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Pictures;

/// <summary>A split supply as a line from leg to leg, with ground where the two legs put it.</summary>
internal sealed class SplitSupplyPicture
{
    private const double Left = 40;
    private const double Right = 260;
    private const double Line = 76;

    private readonly Caption _caption;
    private readonly Triangle _triangle;
    private readonly double _size;

    private SplitSupplyPicture(Caption caption, Triangle triangle)
    {
        _caption = caption;
        _triangle = triangle;
        _size = (Right - Left) / triangle.Base;
    }

    /// <summary>Draws it; null when the three voltages make no triangle.</summary>
    public static Drawn? Draw(Caption caption)
    {
        var legs = caption.Facts.Readings;
        return caption.Facts.Judgement.Verdict != VerdictKind.Absent
            && Triangle.Of(legs[0].Value, legs[2].Value, legs[1].Value) is { } triangle
            && triangle.Apex.X >= 0 && triangle.Apex.X <= triangle.Base
            ? new SplitSupplyPicture(caption, triangle).Draw()
            : null;
    }

    private Drawn Draw()
    {
        VerdictFacts facts = _caption.Facts;
        (Sign, string)[] key =
        [
            .. _caption.Odd,
            (Sign.Band, _caption.Words.Say("picture-key-expected", ("band", string.Join("; ", facts.Expected
                .DistinctBy(band => band.Nominal?.Value).Select(band => $"{band.Name} {Figures.Limits(band)}"))))),
            (Sign.Dashed, _caption.Words.Say("picture-key-middle")),
        ];
        var pen = new Pen(300, 112 + Key.Height(key, 300));
        DrawLegs(pen);
        Key.Draw(pen, 110, key);
        return _caption.Finish(pen, "triangle", facts.Judgement.OddOneOut is null ? "picture-legs" : "picture-legs-odd",
            ("readings", facts.AllLabelled), ("odd", facts.Judgement.OddOneOut ?? ""));
    }

    private void DrawLegs(Pen pen)
    {
        VerdictFacts facts = _caption.Facts;
        double ground = Left + _triangle.Apex.X * _size;
        double up = Line - Math.Min(_triangle.Apex.Y * _size, 24);
        double middle = (Left + Right) / 2;
        // Where ground belongs, and from where to where it may lie.
        double slack = (facts.Number("below")?.Si ?? 0) * (Right - Left) / 2;
        Key.Band(pen, middle - slack, Line - 12, middle + slack, Line + 12);
        pen.Dashed("soft", middle, Line - 20, middle, Line + 20);
        Leg(pen, 1, (Left, Line), (ground, up));
        Leg(pen, 2, (ground, up), (Right, Line));
        pen.Dot("ink", Left, Line, 4).Dot("ink", Right, Line, 4).Dot("found", ground, up);
        pen.Text(Look(1), 0, 20, facts.Labelled(1), bold: IsOdd(1));
        pen.Text(Look(2), 300, 42, facts.Labelled(2), Anchor.End, bold: IsOdd(2));
        pen.Text(Look(0), middle, Line + 31, facts.Labelled(0), Anchor.Middle, bold: IsOdd(0));
    }

    private void Leg(Pen pen, int place, (double X, double Y) from, (double X, double Y) to) =>
        pen.Line(Look(place), from.X, from.Y, to.X, to.Y,
            IsOdd(place)
                ? " stroke-width=\"5\" stroke-dasharray=\"2 3\" stroke-linecap=\"butt\""
                : " stroke-width=\"3\"");

    private string Look(int place) => IsOdd(place) ? "off" : "ink";

    private bool IsOdd(int place) => _caption.Facts.Judgement.OddOneOut == _caption.Facts.Label(place);
}
