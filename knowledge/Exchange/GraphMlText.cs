using System.Globalization;
using System.Xml.Linq;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>
/// The fault graph as GraphML (graphml.graphdrawing.org, version 1.1; held to its schema in tests/Reference).
/// </summary>
public static class GraphMlText
{
    private static readonly XNamespace Ml = "http://graphml.graphdrawing.org/xmlns";

    public static string Write(Library library) => XmlText.Write(new XElement(
        Ml + "graphml",
        Key("kind", "node", "string"), Key("title", "node", "string"), Key("weight", "node", "double"),
        Key("minutes", "node", "double"), Key("relation", "edge", "string"), Key("number", "edge", "double"),
        new XElement(
            Ml + "graph", new XAttribute("id", "walk"), new XAttribute("edgedefault", "directed"),
            library.Graph.Nodes.Select(node => Vertex(node, library)),
            library.Graph.Links.Select(Edge))));

    private static XElement Key(string name, string holder, string type) => new(
        Ml + "key", new XAttribute("id", name), new XAttribute("for", holder), new XAttribute("attr.name", name),
        new XAttribute("attr.type", type));

    private static XElement Vertex(Node node, Library library) => new(
        Ml + "node", new XAttribute("id", Id(node)),
        Value("kind", NodeNames.Kind(node)), Value("title", NodeNames.Title(node, library)),
        node switch
        {
            Node.OfFault fault => Value("weight", Text(library.Graph.Find(fault.Id)!.Weight)),
            Node.OfCheck check => Value("minutes", Text(library.Graph.Find(check.Id)!.Minutes)),
            Node.OfRepair repair => Value("minutes", Text(library.Graph.Find(repair.Id)!.Minutes)),
            _ => null,
        });

    private static XElement Edge(Link link) => new(
        Ml + "edge", new XAttribute("source", Id(link.Source)), new XAttribute("target", Id(link.Target)),
        Value("relation", NodeNames.Relation(link)),
        NodeNames.Number(link) is { } number ? Value("number", Text(number)) : null);

    private static XElement Value(string key, string value) => new(Ml + "data", new XAttribute("key", key), value);

    // A GraphML id is a name token: no space.
    private static string Id(Node node) => NodeNames.Key(node).Replace(' ', '.');

    private static string Text(double value) => value.ToString("0.#########", CultureInfo.InvariantCulture);
}
