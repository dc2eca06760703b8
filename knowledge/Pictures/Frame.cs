using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Pictures;

/// <summary>A ruled field with a scale below and one on the left.</summary>
/// <param name="Across">Of the values across, left to right.</param>
/// <param name="Up">Of the values up, from the bottom.</param>
internal sealed record Frame(Scale Across, Scale Up)
{
    public const double Left = 50;
    public const double Right = 294;
    public const double Top = 22;
    public const double Bottom = 152;

    /// <summary>Where the key begins below the field.</summary>
    public const double Below = 178;

    /// <summary>Rules the field and writes its scales.</summary>
    public void Draw(Pen pen, string unitAcross, string unitUp)
    {
        foreach (double value in Up.Ticks(5))
        {
            pen.Line("thin", Left, Up.At(value), Right, Up.At(value));
            pen.Text("soft", Left - 5, Up.At(value) + 4.5, NumberText.Of(value, 3), Anchor.End, TextSize.Scale);
        }

        double room = Right - TextSize.Width(unitAcross, TextSize.Scale) - 8;
        double written = Left - 10;
        foreach (double value in Across.Ticks(5))
        {
            double x = Across.At(value);
            string text = NumberText.Of(value, 3);
            pen.Line("thin", x, Top, x, Bottom);
            double half = TextSize.Width(text, TextSize.Scale) / 2;
            if (x - half < written || x + half > room) continue;
            pen.Text("soft", x, Bottom + 17, text, Anchor.Middle, TextSize.Scale);
            written = x + half + 4;
        }

        pen.Line("edge", Left, Top, Left, Bottom).Line("edge", Left, Bottom, Right, Bottom)
            .Text("soft", Right, Bottom + 17, unitAcross, Anchor.End, TextSize.Scale)
            .Text("soft", 4, 13, unitUp, Anchor.Start, TextSize.Scale);
    }
}
