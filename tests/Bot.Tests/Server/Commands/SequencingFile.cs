using System.Text.Json.Nodes;

namespace DxAssistant.Bot.Tests.Server.Commands;

/// <summary>The problems with a known optimum in tests/Reference; sequencing.md beside it gives their
/// sources.</summary>
internal static class SequencingFile
{
    public static IEnumerable<JsonObject> Problems { get; } = Read();

    public static JsonObject Problem(string id) => Problems.First(p => (string)p["id"]! == id);

    /// <summary>The problem as it is asked: without what is known about it.</summary>
    public static JsonObject Asked(JsonObject problem, string mode)
    {
        var asked = (JsonObject)problem.DeepClone();
        asked.Remove("optimal");
        asked.Remove("baselines");
        asked["mode"] = mode;
        return asked;
    }

    private static List<JsonObject> Read()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "tests", "Reference", "sequencing.json")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException("tests/Reference is not above the tests");
        }

        var file = JsonNode.Parse(
            File.ReadAllText(Path.Combine(folder.FullName, "tests", "Reference", "sequencing.json")))!;
        return [.. file["instances"]!.AsArray().Select(p => (JsonObject)p!)];
    }
}
