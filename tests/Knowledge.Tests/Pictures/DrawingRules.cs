using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using DxAssistant.Knowledge.Pictures;

namespace DxAssistant.Knowledge.Tests.Pictures;

/// <summary>What holds for every drawing, whatever it shows.</summary>
internal static partial class DrawingRules
{
    private static readonly string[] Places =
        ["x", "y", "x1", "y1", "x2", "y2", "cx", "cy", "width", "height", "points"];

    /// <summary>Well-formed, named, without style or script, with every mark and text on the paper.</summary>
    public static XElement Hold(Drawn drawn)
    {
        XElement svg = XElement.Parse(drawn.Svg);
        Assert.Equal("img", svg.Attribute("role")?.Value);
        XElement[] words = [.. svg.Elements().Where(element => element.Name.LocalName is "title" or "desc")];
        Assert.All(words, element => Assert.NotEmpty(element.Value));
        Assert.Equal(2, words.Length);
        Assert.Equal(drawn.Text, words[1].Value);
        Assert.DoesNotContain("{", drawn.Text, StringComparison.Ordinal);
        Assert.DoesNotMatch("<(style|script|image|foreignObject)|style=|href=| on[a-z]+=|NaN|∞|Infinity", drawn.Svg);
        double[] frame = Numbers(svg.Attribute("viewBox")!.Value);
        Assert.All(svg.Descendants().Attributes().Where(attribute => Places.Contains(attribute.Name.LocalName)),
            attribute => Assert.All(Numbers(attribute.Value), number =>
                Assert.InRange(number, 0, Math.Max(frame[2], frame[3]))));
        Assert.All(DrawnText.In(svg), text =>
        {
            Assert.InRange(text.Left, -1, frame[2]);
            Assert.True(text.Right <= frame[2] + 2, $"“{text.Words}” ends at {text.Right} of {frame[2]}");
            Assert.InRange(text.Bottom, 0, frame[3]);
        });
        return svg;
    }

    public static void NothingCovered(XElement svg)
    {
        IReadOnlyList<DrawnText> texts = DrawnText.In(svg);
        for (int i = 0; i < texts.Count; i++)
        {
            for (int k = i + 1; k < texts.Count; k++)
            {
                Assert.False(texts[i].Covers(texts[k]), $"“{texts[i].Words}” lies on “{texts[k].Words}”");
            }
        }
    }

    private static double[] Numbers(string text) =>
        [.. Number().Matches(text).Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture))];

    [GeneratedRegex(@"-?\d+(\.\d+)?")]
    private static partial Regex Number();
}
