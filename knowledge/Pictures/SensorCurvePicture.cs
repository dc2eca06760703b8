using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Sensors;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Pictures;

/// <summary>A sensor's curve around the temperature beside it, its tolerance, and the reading as a point.</summary>
/// <remarks>Resistance by decades: an even scale would press half of the curve flat.</remarks>
internal sealed class SensorCurvePicture
{
    private const double HalfWindowKelvins = 20;
    private const int Samples = 48;

    private readonly Caption _caption;
    private readonly SensorCurve _curve;
    private readonly Unit _warmth;
    private readonly Unit _ohms;
    private readonly double _celsius;
    private readonly double _tolerance;
    private readonly double _coldest;
    private readonly double _hottest;

    private SensorCurvePicture(Caption caption)
    {
        _caption = caption;
        VerdictFacts facts = caption.Facts;
        _curve = ((JudgeInput.Curve)facts.Request.Inputs["curve"]).Value;
        _warmth = facts.Readings[1].Unit;
        _ohms = facts.Expected[0].Low!.Unit;
        _celsius = facts.Readings[1].Value;
        _tolerance = Math.Abs(facts.Number("tolerance")?.Value ?? 0);
        double from = Math.Clamp(_celsius - HalfWindowKelvins, _curve.Coldest.Celsius,
            Math.Max(_curve.Coldest.Celsius, _curve.Hottest.Celsius - 2 * HalfWindowKelvins));
        (_coldest, _hottest) = (from, Math.Min(from + 2 * HalfWindowKelvins, _curve.Hottest.Celsius));
    }

    public static Drawn? Draw(Caption caption) => new SensorCurvePicture(caption).Draw();

    private ExpectedBand Band => _caption.Facts.Expected[0];

    private Reading Reading => _caption.Facts.Readings[0];

    private Drawn Draw()
    {
        (Sign, string)[] key =
        [
            (Sign.Found, _caption.Words.Say("picture-key-at", ("reading", Figures.Of(Reading)), ("at", At))),
            .. _caption.Doubt(Band), _caption.Expected(Band),
        ];
        var frame = new Frame(Across(), Up());
        var pen = new Pen(300, Frame.Below + Key.Height(key, 300));
        frame.Draw(pen, _warmth.Symbol, _ohms.Symbol);
        DrawCurve(pen, frame);
        DrawPoint(pen, frame);
        Key.Draw(pen, Frame.Below, key);
        return _caption.Finish(pen, "sensor-curve", "picture-curve", ("reading", Figures.Of(Reading)), ("at", At),
            ("side", _caption.Side), ("band", Figures.Limits(Band)));
    }

    private string At => Figures.Of(_caption.Facts.Readings[1]);

    private void DrawCurve(Pen pen, Frame frame)
    {
        (double X, double Y)[] Along(double offset) => [.. Enumerable.Range(0, Samples + 1)
            .Select(i => _coldest + (_hottest - _coldest) * i / Samples)
            .Select(celsius => (frame.Across.At(Shown(celsius)), frame.Up.At(Ohms(celsius + offset))))];
        (double X, double Y)[] low = Along(_tolerance), high = Along(-_tolerance);
        pen.Polygon("band", [.. low, .. high.Reverse()]).Polyline("edge", low).Polyline("edge", high)
            .Polyline("ink", Along(0));
    }

    private void DrawPoint(Pen pen, Frame frame)
    {
        double x = frame.Across.At(Shown(_celsius));
        double found = Reading.State switch
        {
            ReadingState.Number => _ohms.FromSi(Reading.Value),
            ReadingState.OpenCircuit => frame.Up.To,
            _ => frame.Up.From,
        };
        double y = frame.Up.At(found);
        double curve = frame.Up.At(Ohms(_celsius));
        pen.Dashed("soft", x, Math.Min(y, curve), x, Frame.Bottom).Dashed("soft", Frame.Left, y, x, y);
        if (Band is { Found: { } value, StandardUncertainty: { } u })
        {
            double doubt = Figures.Doubt(u).Value;
            double top = frame.Up.At(value.Value + doubt), bottom = frame.Up.At(value.Value - doubt);
            pen.Line("found", x, top, x, bottom).Line("found", x - 4, top, x + 4, top)
                .Line("found", x - 4, bottom, x + 4, bottom);
        }

        pen.Dot("found", x, y);
    }

    private Scale Across() => new(Shown(_coldest), Shown(_hottest), Frame.Left, Frame.Right);

    // The curve and the reading, but no more than a decade beyond the curve: an open sensor stands at the edge.
    private Scale Up()
    {
        double cold = Ohms(_coldest), hot = Ohms(_hottest);
        double low = Math.Min(cold, hot), high = Math.Max(cold, hot);
        double found = Band.Found is { Value: > 0 } read ? Math.Clamp(read.Value, low / 10, high * 10) : low;
        return new Scale(Math.Min(low, found) / 1.5, Math.Max(high, found) * 1.3, Frame.Bottom, Frame.Top, true);
    }

    private double Ohms(double celsius)
    {
        double kelvins = Math.Clamp(Temperature.FromCelsius(Math.Max(celsius, -273)).Kelvins, _curve.Coldest.Kelvins,
            _curve.Hottest.Kelvins);
        _curve.TryResistance(Temperature.FromKelvins(kelvins), out Resistance resistance);
        return _ohms.FromSi(resistance.Ohms);
    }

    private double Shown(double celsius) => _warmth.FromSi(celsius);
}
