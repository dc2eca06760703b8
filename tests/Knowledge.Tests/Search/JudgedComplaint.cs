using System.Collections.Immutable;
using System.Text.Json;
using DxAssistant.Knowledge.Tests.Calculations;

namespace DxAssistant.Knowledge.Tests.Search;

/// <summary>What someone says first, and the symptom that is meant.</summary>
internal sealed record JudgedComplaint(string Text, string Symptom)
{
    /// <summary>Reads tests/Reference/evaluation/<paramref name="file"/>.</summary>
    public static ImmutableArray<JudgedComplaint> Read(string file) =>
        [.. ReferenceFiles.Read(Path.Combine("evaluation", file)).Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Select(Parse)];

    private static JudgedComplaint Parse(string line)
    {
        using var json = JsonDocument.Parse(line);
        return new JudgedComplaint(json.RootElement.GetProperty("text")
            .GetString()!, json.RootElement.GetProperty("symptom").GetString()!);
    }
}
