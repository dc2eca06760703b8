using System.Collections.Frozen;
using System.Xml.Linq;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>What a picture may be made of.</summary>
internal static class PictureParts
{
    /// <summary>The size of every picture, so that all stand alike beside their steps.</summary>
    public const string ViewBox = "0 0 320 200";

    public static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static readonly FrozenSet<string> Scripts =
        FrozenSet.ToFrozenSet(["script", "foreignObject", "handler", "listener"], StringComparer.Ordinal);

    /// <summary>The elements: shapes, text and groups of them.</summary>
    public static readonly FrozenSet<string> Elements = FrozenSet.ToFrozenSet(
        [
            "svg", "title", "desc", "g", "defs", "symbol", "use", "marker", "clipPath", "pattern", "path", "line",
            "polyline", "polygon", "rect", "circle", "ellipse", "text", "tspan",
        ], StringComparer.Ordinal);

    /// <summary>The attributes: places, sizes and kinds of strokes.</summary>
    public static readonly FrozenSet<string> Attributes = FrozenSet.ToFrozenSet(
        [
            "id", "class", "viewBox", "role", "aria-hidden", "aria-label", "aria-labelledby", "href", "d", "points",
            "x", "y", "x1", "y1", "x2", "y2", "cx", "cy", "r", "rx", "ry", "dx", "dy", "width", "height", "transform",
            "pathLength", "fill", "stroke", "fill-rule", "fill-opacity", "stroke-opacity", "opacity", "stroke-width",
            "stroke-dasharray", "stroke-dashoffset", "stroke-linecap", "stroke-linejoin", "stroke-miterlimit",
            "font-size", "font-weight", "font-style", "letter-spacing", "text-anchor", "dominant-baseline", "rotate",
            "clip-path", "clip-rule", "clipPathUnits", "marker-start", "marker-mid", "marker-end", "markerWidth",
            "markerHeight", "markerUnits", "refX", "refY", "orient", "patternUnits", "patternTransform",
            "preserveAspectRatio",
        ], StringComparer.Ordinal);

    /// <summary>The classes, by which paper light and dark colour a picture.</summary>
    public static readonly FrozenSet<string> Classes = FrozenSet.ToFrozenSet(
        ["ink", "soft", "live", "probe-a", "probe-b", "paper"], StringComparer.Ordinal);

    /// <summary>True for an element that can run something.</summary>
    public static bool Runs(XElement element) => Scripts.Contains(element.Name.LocalName);

    /// <summary>True for an attribute that can run something.</summary>
    public static bool Runs(XAttribute attribute) =>
        attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase)
        || attribute.Value.Contains("javascript:", StringComparison.OrdinalIgnoreCase);

    /// <summary>True for an attribute that takes a colour.</summary>
    public static bool IsColour(XAttribute attribute) => attribute.Name.LocalName is "fill" or "stroke";

    /// <summary>The id that an attribute refers to, its number sign included; whatever else it refers to, as
    /// written; null when it refers to nothing.</summary>
    public static string? Reference(XAttribute attribute)
    {
        if (attribute.Name.LocalName == "href")
        {
            return attribute.Value;
        }

        int start = attribute.Value.IndexOf("url(", StringComparison.OrdinalIgnoreCase);
        int end = start < 0 ? -1 : attribute.Value.IndexOf(')', start);
        return start < 0 ? null : attribute.Value[(start + 4)..(end < 0 ? attribute.Value.Length : end)];
    }
}
