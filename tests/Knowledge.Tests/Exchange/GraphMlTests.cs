using System.Globalization;
using System.Xml.Linq;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;

using DxAssistant.Knowledge.Exchange;

namespace DxAssistant.Knowledge.Tests.Exchange;

/// <summary>The graph of the shipped pages as GraphML.</summary>
/// <remarks>Source: GraphML 1.1, graphml.graphdrawing.org; its schema in tests/Reference.</remarks>
public sealed class GraphMlTests
{
    private const string Published = "graphml-1.1-part.xsd";
    private static readonly XNamespace Ml = "http://graphml.graphdrawing.org/xmlns";

    [Fact]
    public void ShippedPages_ByThePublishedSchema_AreValid() =>
        Assert.Empty(Schema.Faults(GraphMlText.Write(ShippedPages.Library), Published));

    // Ids are unique and name tokens, ends and keys are there.
    [Theory]
    [InlineData("<key id='a' for='node'/><graph edgedefault='directed'><node id='x'/><edge source='x' "
        + "target='y'/></graph>")]
    [InlineData("<key id='a' for='vertex'/>")]
    [InlineData("<key id='a' attr.type='number'/>")]
    [InlineData("<graph edgedefault='directed'><node id='x'/><node id='x'/></graph>")]
    [InlineData("<graph edgedefault='directed'><node id='x'><data key='a'>1</data></node></graph>")]
    [InlineData("<graph edgedefault='directed'><node id='two words'/></graph>")]
    [InlineData("<graph><node id='x'/></graph>")]
    public void TextThatIsWrong_ByThePublishedSchema_IsFoundOut(string inner) =>
        Assert.NotEmpty(Schema.Faults($"<graphml xmlns='{Ml}'>{inner}</graphml>", Published));

    [Fact]
    public void ShippedPages_ReadAgain_AreTheSameLinksWithTheirNumbers()
    {
        XElement graph = XDocument.Parse(GraphMlText.Write(ShippedPages.Library)).Root!.Element(Ml + "graph")!;
        FaultGraph whole = ShippedPages.Library.Graph;

        Assert.Equal(whole.Nodes.Count(), graph.Elements(Ml + "node").Count());
        Assert.Equal(whole.Links.Select(Line).Order(StringComparer.Ordinal), graph.Elements(Ml + "edge").Select(Line)
            .Order(StringComparer.Ordinal));
    }

    private static string Line(Link link) => string.Join(
        '|', NodeNames.Key(link.Source).Replace(' ', '.'), NodeNames.Key(link.Target)
            .Replace(' ', '.'), NodeNames.Relation(link),
        NodeNames.Number(link)?.ToString("0.######", CultureInfo.InvariantCulture));

    private static string Line(XElement edge) => string.Join(
        '|', edge.Attribute("source")!.Value, edge.Attribute("target")!.Value, Value(edge, "relation"),
        Value(edge, "number") is { } number
            ? double.Parse(number, CultureInfo.InvariantCulture).ToString("0.######", CultureInfo.InvariantCulture)
            : null);

    private static string? Value(XElement element, string key) =>
        element.Elements(Ml + "data").FirstOrDefault(data => data.Attribute("key")!.Value == key)?.Value;
}
