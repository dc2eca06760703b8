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

    /// <summary>A new file with the first problems only.</summary>
    public static string WithFirst(int problems)
    {
        string file = Path.GetTempFileName();
        File.WriteAllText(file, new JsonObject
        {
            ["instances"] = new JsonArray([.. Problems.Take(problems).Select(problem => problem.DeepClone())]),
        }.ToJsonString());
        return file;
    }

    /// <summary>A problem of noisy checks, each fault with a pattern of its own.</summary>
    public static JsonObject Noisy(int faults, int checks) => new()
    {
        ["id"] = "noisy",
        ["accessStates"] = new JsonArray("any"),
        ["transitionCost"] = JsonNode.Parse("[[0]]"),
        ["startState"] = "any",
        ["faults"] = new JsonArray([.. Enumerable.Range(0, faults)
            .Select(f => new JsonObject { ["id"] = $"f{f}", ["prior"] = 1.0 / faults })]),
        ["checks"] = new JsonArray([.. Enumerable.Range(0, checks).Select(c => new JsonObject
        {
            ["id"] = $"c{c}",
            ["cost"] = 2 + c % 7,
            ["access"] = new JsonArray("any"),
            ["outcomes"] = new JsonArray("pass", "fail"),
            ["likelihood"] = new JsonObject(Enumerable.Range(0, faults).Select(f => KeyValuePair.Create(
                $"f{f}", (JsonNode?)new JsonObject
                {
                    ["pass"] = (f * 7 + c * 3) % 5 < 2 ? 0.1 : 0.9, ["fail"] = (f * 7 + c * 3) % 5 < 2 ? 0.9 : 0.1,
                }))),
        })]),
        ["repairs"] = new JsonArray([.. Enumerable.Range(0, faults).Select(f => new JsonObject
        {
            ["id"] = $"r{f}", ["cost"] = 10 + f, ["verifyCost"] = 1, ["access"] = new JsonArray("any"),
            ["fixes"] = new JsonArray($"f{f}"),
        })]),
    };

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
