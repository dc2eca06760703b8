using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Pictures;

/// <summary>One value on a scale, with what is expected and how far the value may be off.</summary>
internal static class Strip
{
    /// <summary>How much room it takes.</summary>
    public const double Height = 50;

    private const double Left = 16;
    private const double Right = 284;

    /// <summary>Beyond this a scale by decades shows more.</summary>
    private const double WideRatio = 20;

    /// <param name="state">What the meter showed; anything but a number stands at an end of the scale.</param>
    public static void Draw(Pen pen, double top, ExpectedBand band, ReadingState state = ReadingState.Number)
    {
        Scale scale = ScaleOf(band);
        double axis = top + 28;
        double low = scale.At(band.Low?.Value ?? scale.From), high = scale.At(band.High?.Value ?? scale.To);
        Key.Band(pen, low, top + 4, Math.Max(high, low + 3), axis);
        pen.Line("edge", Left, axis, Right, axis);
        DrawFigures(pen, scale, axis, (band.Low ?? band.High ?? band.Nominal ?? band.Found)!.Unit.Symbol);
        DrawFound(pen, scale, top + 16, band, state);
    }

    private static void DrawFigures(Pen pen, Scale scale, double axis, string unit)
    {
        double room = pen.Width - TextSize.Width(unit, TextSize.Scale) - 8;
        double written = 0;
        foreach (double value in scale.Ticks(4))
        {
            string text = NumberText.Of(value, 3);
            double half = TextSize.Width(text, TextSize.Scale) / 2;
            double x = scale.At(value);
            pen.Line("edge", x, axis, x, axis + 5);
            if (x - half < written || x + half > room) continue;
            pen.Text("soft", x, axis + 18, text, Anchor.Middle, TextSize.Scale);
            written = x + half + 4;
        }

        pen.Text("soft", pen.Width - 2, axis + 18, unit, Anchor.End, TextSize.Scale);
    }

    private static void DrawFound(Pen pen, Scale scale, double y, ExpectedBand band, ReadingState state)
    {
        if (band.Found is not { } found)
        {
            if (state == ReadingState.OpenCircuit) AtEnd(pen, Right, y, 1);
            if (state == ReadingState.ShortCircuit) AtEnd(pen, Left, y, -1);
            return;
        }

        if (band.StandardUncertainty is { Value: > 0 } u)
        {
            double doubt = Figures.Doubt(u).Value;
            Key.Doubt(pen, scale.At(found.Value - doubt), scale.At(found.Value + doubt), y);
        }

        pen.Dot("found", scale.At(found.Value), y);
    }

    // Off the scale: the point and an arrow that leads on.
    private static void AtEnd(Pen pen, double x, double y, int way) =>
        pen.Dot("found", x - way * 12, y).Line("found", x - way * 4, y, x + way * 8, y)
            .Polyline("found", [(x + way * 3, y - 5), (x + way * 8, y), (x + way * 3, y + 5)]);

    private static Scale ScaleOf(ExpectedBand band)
    {
        double doubt = band.StandardUncertainty is { } u ? Figures.Doubt(u).Value : 0;
        double[] values = [.. new[]
        {
            band.Low?.Value, band.High?.Value, band.Nominal?.Value, band.Found?.Value - doubt, band.Found?.Value
                + doubt,
        }.OfType<double>()];
        double[] positive = [.. values.Where(value => value > 0)];
        bool wide = positive.Length == values.Length && values.Max() / values.Min() > WideRatio;
        return wide
            ? new Scale(values.Min() / 2, values.Max() * 2, Left, Right, true)
            : Even(values, band);
    }

    // A band without a lower end begins at nothing; one without an upper end goes on.
    private static Scale Even(double[] values, ExpectedBand band)
    {
        double least = band.Low is null ? Math.Min(0, values.Min()) : values.Min();
        double most = band.High is null && band.Low is not null
            ? Math.Max(values.Max(), band.Low.Value * 1.5)
            : values.Max();
        double span = most - least > 0 ? most - least : Math.Max(1, Math.Abs(most));
        double from = band.Low is null && least >= 0 ? 0 : least - 0.15 * span;
        return new Scale(from, most + 0.15 * span, Left, Right);
    }
}
