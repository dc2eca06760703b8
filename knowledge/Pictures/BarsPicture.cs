using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Pictures;

/// <summary>A set of readings as bars under each other, with what each is expected to be.</summary>
internal sealed class BarsPicture
{
    private const double RowHeight = 25;
    private const double WideRatio = 100;

    private readonly Caption _caption;
    private readonly ImmutableArray<Reading> _readings;
    private readonly double _left;
    private readonly double _right;
    private readonly Scale _scale;

    private BarsPicture(Caption caption)
    {
        _caption = caption;
        _readings = caption.Facts.Readings;
        _left = Places.Max(i => TextSize.Bold(Facts.Label(i), TextSize.Plain)) + 8;
        _right = 300 - Places.Max(i => TextSize.Bold(Figures.Of(_readings[i]), TextSize.Plain)) - 8;
        _scale = ScaleOf();
    }

    public static Drawn Draw(Caption caption) => new BarsPicture(caption).Draw();

    private VerdictFacts Facts => _caption.Facts;

    private IEnumerable<int> Places => Enumerable.Range(0, _readings.Length);

    private Drawn Draw()
    {
        (Sign, string)[] key =
        [
            .. _caption.Odd,
            .. Bands.Where(band => band is not null && Figures.Limits(band).Length > 0).Take(1)
                .Select(band => IsPoint(band!)
                    ? (Sign.Dashed, _caption.Expected(band!).Item2)
                    : _caption.Expected(band!)),
        ];
        double rows = Places.Sum(Height);
        var pen = new Pen(300, rows + 4 + (key.Length > 0 ? Key.Height(key, 300) : 0));
        double top = 2;
        foreach (int i in Places)
        {
            DrawRow(pen, top, i);
            top += Height(i);
        }

        Key.Draw(pen, rows + 2, key);
        return Finish(pen);
    }

    private Drawn Finish(Pen pen)
    {
        string limits = Bands.Select(band => band is null ? "" : Figures.Limits(band)).First();
        string phrase = "picture-bars" + (limits.Length > 0 ? "-band" : "")
            + (Facts.Judgement.OddOneOut is null ? "" : "-odd");
        return _caption.Finish(pen, "bars", phrase, ("readings", Facts.AllLabelled), ("band", limits),
            ("odd", Facts.Judgement.OddOneOut ?? ""));
    }

    // Six come in two threes that are compared each with itself.
    private double Height(int place) => RowHeight + (_readings.Length == 6 && place == 2 ? 8 : 0);

    private void DrawRow(Pen pen, double top, int i)
    {
        double upper = top + 5, lower = top + 19;
        if (Bands[i] is { } band && (band.Low ?? band.High) is not null)
        {
            double low = _scale.At(band.Low?.Value ?? _scale.From), high = _scale.At(band.High?.Value ?? _scale.To);
            Key.Band(pen, low, top + 1, Math.Max(high, low + 3), top + 23);
        }

        else if (Bands[i]?.Nominal is { } nominal)
        {
            double x = _scale.At(Unit.FromSi(nominal.Si));
            pen.Dashed("soft", x, top + 1, x, top + 23);
        }

        bool odd = IsOdd(i);
        pen.Text(odd ? "off" : "ink", 0, top + 17, Facts.Label(i), bold: odd);
        pen.Text(odd ? "off" : "ink", 300, top + 17, Figures.Of(_readings[i]), Anchor.End, bold: true);
        pen.Line("edge", _left, top, _left, top + RowHeight);
        DrawBar(pen, upper, lower, i, odd);
    }

    private void DrawBar(Pen pen, double upper, double lower, int i, bool odd)
    {
        double middle = (upper + lower) / 2;
        if (_readings[i].State == ReadingState.OpenCircuit)
        {
            // No connection: a line that is broken and goes on off the scale.
            pen.Dashed("off", _left, middle, _right - 6, middle)
                .Polyline("off", [(_right - 11, middle - 5), (_right - 6, middle), (_right - 11, middle + 5)]);
            return;
        }

        double end = Math.Max(_left + 3, _scale.At(Shown(i)));
        if (odd) Key.Rungs(pen, _left, upper, end, lower);
        else pen.Box("found", _left, upper, end, lower, " fill=\"currentColor\" fill-opacity=\"0.55\"");
    }

    // Of some sets only the value aimed at is known, not how far it may be off.
    private static bool IsPoint(ExpectedBand band) => (band.Low ?? band.High) is null;

    // The odd one is a reading, or a terminal that two readings share.
    private bool IsOdd(int i) => Facts.Judgement.OddOneOut is { } odd && (Facts.Label(i) == odd
        || (_readings[i].State != ReadingState.Number && Facts.Label(i).Contains(odd, StringComparison.Ordinal)));

    private double Shown(int i) => Unit.FromSi(_readings[i].Value);

    // What is expected of a figure made from all of them stands in no row.
    private ExpectedBand?[] Bands =>
        [.. Places.Select(i => Facts.Expected.FirstOrDefault(band => band.Name == Facts.Label(i)))];

    private Unit Unit => Bands.Select(band => (band?.Low ?? band?.High)?.Unit).FirstOrDefault(unit => unit is not null)
        ?? _readings.FirstOrDefault(reading => reading.State == ReadingState.Number)?.Unit ?? _readings[0].Unit;

    private Scale ScaleOf()
    {
        double[] values =
        [
            .. Places.Where(i => _readings[i].State == ReadingState.Number).Select(Shown),
            .. Bands.SelectMany(band => new[] { band?.Low, band?.High, band?.Nominal }).OfType<Quantity>()
                .Select(quantity => Unit.FromSi(quantity.Si)),
        ];
        double[] positive = [.. values.Where(value => value > 0)];
        if (positive.Length == 0) return new Scale(0, 1, _left, _right);
        return Unit.Kind == QuantityKind.Resistance && positive.Max() / positive.Min() > WideRatio
            ? new Scale(positive.Min() / 3, positive.Max() * 1.5, _left, _right, true)
            : new Scale(0, positive.Max() * 1.06, _left, _right);
    }
}
