using System.Globalization;
using System.Text;

namespace DxAssistant.Knowledge.Pictures;

/// <summary>Writes a drawing as SVG text: the same strokes, the same bytes, on every system.</summary>
/// <param name="width">Of the paper; every place is cut to it.</param>
/// <param name="height">Of the paper.</param>
internal sealed class Pen(double width, double height)
{
    private readonly StringBuilder _marks = new();

    // The name of a link is the words in it: between two lines there must be a space.
    private bool _isLink;

    public double Width { get; } = width;

    public double Height { get; } = height;

    public Pen Line(string look, double fromX, double fromY, double toX, double toY, string more = "") =>
        Mark($"<line class=\"{look}\" x1=\"{X(fromX)}\" y1=\"{Y(fromY)}\" x2=\"{X(toX)}\" y2=\"{Y(toY)}\"{more}/>");

    /// <summary>A line that is not drawn through.</summary>
    public Pen Dashed(string look, double fromX, double fromY, double toX, double toY) =>
        Line(look, fromX, fromY, toX, toY, " stroke-dasharray=\"5 4\"");

    public Pen Polyline(string look, IEnumerable<(double X, double Y)> points, string more = "") =>
        Mark($"<polyline class=\"{look}\" points=\"{Points(points)}\"{more}/>");

    public Pen Polygon(string look, IEnumerable<(double X, double Y)> points, string more = "") =>
        Mark($"<polygon class=\"{look}\" points=\"{Points(points)}\"{more}/>");

    public Pen Box(string look, double left, double top, double right, double bottom, string more = "")
    {
        double x = Math.Clamp(left, 0, Width), y = Math.Clamp(top, 0, Height);
        double wide = Math.Max(0, Math.Clamp(right, 0, Width) - x), high =
            Math.Max(0, Math.Clamp(bottom, 0, Height) - y);
        return Mark(
            $"<rect class=\"{look}\" x=\"{N(x)}\" y=\"{N(y)}\" width=\"{N(wide)}\" height=\"{N(high)}\"{more}/>");
    }

    /// <summary>A point that was found: filled, with a ring of paper around it so that lines behind it stop.</summary>
    public Pen Dot(string look, double x, double y, double radius = 5.5) =>
        Circle("paper", x, y, radius + 2).Circle(look, x, y, radius, " fill=\"currentColor\"");

    public Pen Circle(string look, double x, double y, double radius, string more = "") =>
        Mark($"<circle class=\"{look}\" cx=\"{X(x)}\" cy=\"{Y(y)}\" r=\"{N(radius)}\"{more}/>");

    public Pen Text(string look, double x, double y, string words, Anchor anchor = Anchor.Start,
        int size = TextSize.Plain,
        bool bold = false)
    {
        string at = anchor switch
        {
            Anchor.Middle => " text-anchor=\"middle\"",
            Anchor.End => " text-anchor=\"end\"",
            _ => "",
        };
        string weight = bold ? " font-weight=\"700\"" : "";
        return Mark(
            $"<text class=\"{look}\" x=\"{X(x)}\" y=\"{Y(y)}\" font-size=\"{size}\"{at}{weight}>{Escaped(words)}{(_isLink ? " " : "")}</text>");
    }

    /// <summary>Words that run upwards.</summary>
    public Pen TextUp(string look, double x, double y, string words, int size) =>
        Mark(
            $"<text class=\"{look}\" x=\"{X(x)}\" y=\"{Y(y)}\" font-size=\"{size}\" transform=\"rotate(-90 {X(x)} {Y(y)})\">{Escaped(words)}</text>");

    /// <summary>Marks that say what they are when one points at them.</summary>
    public Pen Named(string name, Action<Pen> marks)
    {
        Mark($"<g><title>{Escaped(name)}</title>");
        marks(this);
        return Mark("</g>");
    }

    /// <summary>Marks that lead to a page.</summary>
    /// <param name="target">Where to; null when it leads nowhere.</param>
    public Pen Link(string? target, Action<Pen> marks)
    {
        if (target is not null) Mark($"<a class=\"way\" href=\"{Quoted(target)}\">");
        _isLink = true;
        marks(this);
        _isLink = false;
        return target is null ? this : Mark("</a>");
    }

    /// <summary>The whole drawing.</summary>
    /// <param name="role"><c>img</c>, or <c>group</c> when there are links in it.</param>
    public string Finish(string kind, string title, string text, string role = "img") =>
        string.Create(CultureInfo.InvariantCulture,
            $"""<svg xmlns="http://www.w3.org/2000/svg" class="drawing {kind}" viewBox="0 0 {N(Width)} {N(Height)}" role="{role}">""")
        + $"<title>{Escaped(title)}</title><desc>{Escaped(text)}</desc>{_marks}</svg>";

    private Pen Mark(string mark)
    {
        _marks.Append(mark);
        return this;
    }

    private string X(double x) => N(Math.Clamp(x, 0, Width));

    private string Y(double y) => N(Math.Clamp(y, 0, Height));

    private string Points(IEnumerable<(double X, double Y)> points) =>
        string.Join(' ', points.Select(point => $"{X(point.X)},{Y(point.Y)}"));

    // A tenth of a unit is finer than any screen; coarser than the last bit in which systems may differ.
    private static string N(double value) =>
        (Math.Round(value, 1, MidpointRounding.AwayFromZero) + 0.0).ToString("0.#", CultureInfo.InvariantCulture);

    private static string Quoted(string words) => Escaped(words).Replace("\"", "&quot;", StringComparison.Ordinal);

    private static string Escaped(string words) => words.Replace("&", "&amp;", StringComparison.Ordinal)
        .Replace("<", "&lt;", StringComparison.Ordinal).Replace(">", "&gt;", StringComparison.Ordinal);
}
