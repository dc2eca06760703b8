using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Air;
using DxAssistant.Knowledge.Calculations.Circuit;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Pictures;

/// <summary>The saturation curve with the gauge's reading on it, the temperature of the line or the air, and the
/// distance between the two.</summary>
internal sealed class SaturationPicture
{
    private const int Samples = 40;

    private readonly Caption _caption;
    private readonly Refrigerant _refrigerant;
    private readonly LineFigure _figure;
    private readonly SaturationPoint _point;
    private readonly double _air;
    private readonly double _gauge;
    private readonly double _celsius;
    private readonly Unit _warmth;
    private readonly Unit _pressure;

    private SaturationPicture(Caption caption, Refrigerant refrigerant)
    {
        VerdictFacts facts = caption.Facts;
        _caption = caption;
        _refrigerant = refrigerant;
        _figure = facts.Judge switch
        {
            "superheat" => LineFigure.Superheat,
            "subcooling" => LineFigure.Subcooling,
            _ => LineFigure.SaturationSplit,
        };
        _air = StandardAtmosphere.PressureAt(Math.Clamp(facts.Number("altitude")?.Si ?? 0, -5_000, 11_000)).Pascals;
        (_gauge, _celsius) = (facts.Readings[0].Value, facts.Readings[1].Value);
        (_pressure, _warmth) = (facts.Readings[0].Unit, facts.Readings[1].Unit);
        _point = SaturationPoint.At(refrigerant, _figure.Curve, _gauge, _air);
    }

    /// <summary>Draws it; null when the reading lies outside the table, where there is no curve.</summary>
    public static Drawn? Draw(Caption caption) =>
        caption.Facts.Request.Inputs.GetValueOrDefault("refrigerant") is JudgeInput.Word { Value: var name }
        && Refrigerant.Find(name) is { Dew: not null, Bubble: not null } refrigerant
        && new SaturationPicture(caption, refrigerant) is { _point.Outside: 0 } picture
            ? picture.Draw()
            : null;

    private ExpectedBand Band => _caption.Facts.Expected[0];

    private Drawn Draw()
    {
        VerdictFacts facts = _caption.Facts;
        string found = Figures.Of(Band.Found!);
        (Sign, string)[] key =
        [
            (Sign.Open,
                _caption.Words.Say("picture-key-saturation", ("temperature", Figures.Of(_point.Celsius.In(_warmth))),
                ("pressure", Figures.Of(facts.Readings[0])))),
            (Sign.Found, facts.Labelled(1)),
            (Sign.Distance, $"{Band.Name} {found}"),
            .. _caption.Doubt(Band), _caption.Expected(Band),
        ];
        var frame = new Frame(Across(), Up());
        var pen = new Pen(300, Frame.Below + Key.Height(key, 300));
        frame.Draw(pen, _warmth.Symbol, _pressure.Symbol);
        DrawCurve(pen, frame);
        DrawDistance(pen, frame);
        Key.Draw(pen, Frame.Below, key);
        return _caption.Finish(pen, "saturation", "picture-saturation", ("refrigerant", _refrigerant.Name),
            ("readings", facts.AllLabelled), ("name", Band.Name), ("found", found), ("side", _caption.Side),
            ("band", Figures.Limits(Band)));
    }

    private void DrawCurve(Pen pen, Frame frame)
    {
        var points = new List<(double X, double Y)>();
        for (int i = 0; i <= Samples; i++)
        {
            double shown = frame.Up.From + (frame.Up.To - frame.Up.From) * i / Samples;
            SaturationPoint at = SaturationPoint.At(_refrigerant, _figure.Curve, _pressure.ToSi(shown), _air);
            double warmth = _warmth.FromSi(at.Celsius);
            if (at.Outside == 0 && frame.Across.Holds(warmth))
                points.Add((frame.Across.At(warmth), frame.Up.At(shown)));
        }

        pen.Polyline("ink", points);
    }

    private void DrawDistance(Pen pen, Frame frame)
    {
        double y = frame.Up.At(_pressure.FromSi(_gauge));
        double saturation = X(frame, _point.Celsius), line = X(frame, _celsius);
        // Where the line should be: so far from saturation, to the side on which the figure grows.
        double near = X(frame, Offset(Band.Low)), far = X(frame, Offset(Band.High));
        Key.Band(pen, Math.Min(near, far), y - 11, Math.Max(near, far), y + 11);
        pen.Dashed("soft", Frame.Left, y, Frame.Right, y);
        pen.Dashed("soft", saturation, y, saturation, Frame.Bottom).Dashed("soft", line, y, line, Frame.Bottom);
        if (Math.Abs(line - saturation) > 12) Key.Distance(pen, saturation, line, y - 16);
        pen.Circle("paper", saturation, y, 6.5).Circle("ink", saturation, y, 5).Dot("found", line, y);
    }

    private double X(Frame frame, double celsius) => frame.Across.At(_warmth.FromSi(celsius));

    private double Offset(Quantity? limit) =>
        limit is null ? _celsius : _point.Celsius - _figure.SaturationSign * limit.Si;

    private Scale Across()
    {
        double[] celsius = [_point.Celsius, _celsius, Offset(Band.Low), Offset(Band.High)];
        double room = Math.Max(4, 0.15 * (celsius.Max() - celsius.Min()));
        return new Scale(_warmth.FromSi(celsius.Min() - room), _warmth.FromSi(celsius.Max() + room), Frame.Left,
            Frame.Right);
    }

    private Scale Up()
    {
        double absolute = _gauge + _air;
        return new Scale(_pressure.FromSi(0.6 * absolute - _air), _pressure.FromSi(1.4 * absolute - _air),
            Frame.Bottom, Frame.Top);
    }
}
