using System.Text.Json.Nodes;
using DxAssistant.Knowledge.Pictures.Plans;
using Jint;

namespace DxAssistant.Server.Workbench.Drawing;

/// <summary>Layered layout by the dagre library, in an interpreter without clock, files or network.</summary>
/// <remarks>
/// Ranks by network simplex, few crossings by barycentres, places after Brandes and Köpf 2001 (the library's own
/// account). It uses sums and comparisons of doubles alone, and objects in the order they were made: the same boxes
/// give the same places on every machine.
/// </remarks>
internal sealed class DagreLayout : ILayeredLayout
{
    private static readonly Lazy<Prepared<Acornima.Ast.Script>[]> Scripts =
        new(() => [.. new[] { "place.js", "dagre.min.js" }.Select(name => Engine.PrepareScript(Read(name), name))]);

    public IReadOnlyDictionary<string, (double X, double Y)> Place(IReadOnlyList<LayoutBox> boxes,
        IReadOnlyList<LayoutLine> lines)
    {
        var asked = new JsonObject
        {
            ["boxes"] = new JsonArray(
                [.. boxes.Select(box => (JsonNode)new JsonObject
                {
                    ["id"] = box.Id, ["width"] = box.Width, ["height"] = box.Height,
                })]),
            ["lines"] = new JsonArray(
                [.. lines.Select(line => (JsonNode)new JsonObject { ["from"] = line.From, ["to"] = line.To })]),
        };
        using var engine = new Engine();
        foreach (Prepared<Acornima.Ast.Script> script in Scripts.Value) engine.Execute(script);
        string placed = engine.Invoke("place", asked.ToJsonString()).AsString();
        return JsonNode.Parse(placed)!.AsArray().ToDictionary(
            box => (string)box!["id"]!, box => ((double)box!["x"]!, (double)box["y"]!), StringComparer.Ordinal);
    }

    private static string Read(string name)
    {
        using Stream stream = typeof(DagreLayout).Assembly.GetManifestResourceStream($"dagre/{name}")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
