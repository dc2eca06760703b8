using System.Text.Json;

namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>What people say, as the evaluation sets hold it.</summary>
internal static class Knowing
{
    /// <summary>The texts of a set.</summary>
    public static IEnumerable<string> Said(string set) =>
        from line in File.ReadLines(Repository.PathOf("tests", "Reference", "evaluation", set + ".jsonl"))
        where line.Length > 0
        let json = JsonDocument.Parse(line).RootElement
        where json.TryGetProperty("text", out _)
        select json.GetProperty("text").GetString()!;
}
