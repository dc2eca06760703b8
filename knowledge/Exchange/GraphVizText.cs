using System.Globalization;
using System.Text;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>The fault graph in GraphViz's DOT language.</summary>
public static class GraphVizText
{
    private static readonly (string Kind, string Shape)[] Shapes =
        [("symptom", "cds"), ("fault", "box"), ("check", "tab"), ("repair", "component"), ("access", "folder")];

    public static string Write(Library library)
    {
        StringBuilder text = new("digraph walk {\n  rankdir=LR;\n");
        foreach ((string kind, string shape) in Shapes)
        {
            text.Append(CultureInfo.InvariantCulture, $"  node [shape={shape}];\n");
            foreach (Node node in library.Graph.Nodes.Where(node => NodeNames.Kind(node) == kind))
                text.Append(CultureInfo.InvariantCulture,
                    $"  {Id(node)} [label={Quoted(NodeNames.Title(node, library))}];\n");
        }

        foreach (Link link in library.Graph.Links)
            text.Append(CultureInfo.InvariantCulture,
                $"  {Id(link.Source)} -> {Id(link.Target)} [label={Quoted(Label(link))}];\n");
        return text.Append("}\n").ToString();
    }

    private static string Id(Node node) => Quoted(NodeNames.Key(node));

    private static string Label(Link link) =>
        NodeNames.Number(link) is { } number
            ? string.Create(CultureInfo.InvariantCulture, $"{NodeNames.Relation(link)} {number:0.####}")
            : NodeNames.Relation(link);

    private static string Quoted(string text) =>
        $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
}
