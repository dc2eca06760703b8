using System.Text.Json;
using DxAssistant.Knowledge.Clarifying;
using DxAssistant.Knowledge.Search;
using DxAssistant.Server.Commands.Asking;

namespace DxAssistant.Server.Commands.Scoring;

/// <summary>One line of a set of complaints and what was made of it.</summary>
/// <param name="Expected">A symptom id.</param>
internal sealed record SymptomLine(string Said, string Expected, MatchResult Answer)
{
    private const string Key = "symptom";
    private const int Few = 3;

    /// <exception cref="RequestException">The line lacks something.</exception>
    public static SymptomLine Of(JsonElement line, Matcher matcher)
    {
        string said = Request.Text(line, "text");
        return new SymptomLine(said, Request.Text(line, Key), matcher.Match(said));
    }

    /// <summary>Whether a line tells of a symptom, not of a fault.</summary>
    public static bool Is(JsonElement line) =>
        line.ValueKind == JsonValueKind.Object && line.TryGetProperty(Key, out _);

    public bool IsFirst => Answer.Symptoms is [var first, ..] && first.Id == Expected;

    public bool IsAmongThree => Answer.Symptoms.Take(Few).Any(symptom => symptom.Id == Expected);

    /// <summary>A talk would go on without asking back.</summary>
    public bool IsCertain => Offering.CertainSymptom(Answer) is not null;
}
