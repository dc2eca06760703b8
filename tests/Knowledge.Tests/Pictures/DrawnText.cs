using System.Globalization;
using System.Xml.Linq;
using DxAssistant.Knowledge.Pictures;

namespace DxAssistant.Knowledge.Tests.Pictures;

/// <summary>One text of a drawing and the room it takes.</summary>
internal sealed record DrawnText(string Words, double Left, double Top, double Right, double Bottom)
{
    public static IReadOnlyList<DrawnText> In(XElement svg) =>
        [.. svg.Descendants().Where(element => element.Name.LocalName == "text").Select(Of)];

    /// <summary>True when the two lie on each other by more than a unit.</summary>
    public bool Covers(DrawnText other) => Left + 1 < other.Right && other.Left + 1 < Right
        && Top + 1 < other.Bottom && other.Top + 1 < Bottom;

    private static DrawnText Of(XElement text)
    {
        int size = int.Parse(text.Attribute("font-size")!.Value, CultureInfo.InvariantCulture);
        double x = Number(text, "x"), y = Number(text, "y");
        double wide = text.Attribute("font-weight") is null
            ? TextSize.Width(text.Value, size)
            : TextSize.Bold(text.Value, size);
        double left = text.Attribute("text-anchor")?.Value switch
        {
            "middle" => x - wide / 2,
            "end" => x - wide,
            _ => x,
        };
        return new DrawnText(text.Value, left, y - 0.75 * size, left + wide, y + 0.2 * size);
    }

    private static double Number(XElement element, string name) =>
        double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);
}
