using System.Collections.Immutable;
using System.Text.Json;
using DxAssistant.Knowledge.Tests.Calculations;

namespace DxAssistant.Knowledge.Tests.Search;

/// <summary>One line of a phrase set: what someone says, and what it should come to.</summary>
/// <param name="Fault">A fault id, "none", "refuse", or empty for a line of another kind.</param>
/// <param name="Not">Faults that the phrase rules out; none of them may come first.</param>
internal sealed record JudgedPhrase(string Text, string Fault, ImmutableArray<string> Not)
{
    /// <summary>Reads tests/Reference/evaluation/<paramref name="file"/>.</summary>
    public static ImmutableArray<JudgedPhrase> Read(string file) =>
        [.. ReferenceFiles.Read(Path.Combine("evaluation", file)).Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Select(Parse)];

    private static JudgedPhrase Parse(string line)
    {
        using var json = JsonDocument.Parse(line);
        var phrase = json.RootElement;
        return new JudgedPhrase(
            phrase.GetProperty("text").GetString()!,
            phrase.TryGetProperty("fault", out var fault) ? fault.GetString()! : "",
            phrase.TryGetProperty("not", out var not)
                ? [.. not.EnumerateArray().Select(ruledOut => ruledOut.GetString()!)]
                : []);
    }
}
