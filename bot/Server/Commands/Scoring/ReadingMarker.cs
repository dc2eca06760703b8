using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Server.Commands.Asking;

namespace DxAssistant.Server.Commands.Scoring;

/// <summary>Marks an answer of <c>read</c>.</summary>
/// <remarks>
/// A line holds <c>text</c>, <c>asked</c>?, <c>expect</c> and, where more than one answer would do, <c>accept</c>, a
/// list of further ones. An expectation is <c>"ask-back"</c>, <c>"open-circuit"</c>, <c>"short"</c>, or a list of
/// readings <c>{"quantity","value"}</c> in SI, or <c>{"quantity","state"}</c>, each with a <c>label</c> where it
/// counts.
/// </remarks>
internal static class ReadingMarker
{
    public static Marked Mark(JsonElement line)
    {
        var answer = ReadCommand.Answer(line);
        ImmutableArray<JsonElement> accepted =
            [Request.Part(line, "expect"), .. Request.OptionalItems(line, "accept")];
        var mark = accepted.Any(expected => Meets(answer, expected)) ? Scoring.Mark.Right
            : AsksBack(answer, accepted) ? Scoring.Mark.AskedBack : Scoring.Mark.Wrong;
        return new Marked(
            mark, Request.Text(line, "text"), accepted[0].GetRawText(), answer.ToJsonString(JsonLines.Plain));
    }

    private static bool Meets(JsonObject answer, JsonElement expected)
    {
        string result = (string)answer["result"]!;
        if (expected.ValueKind == JsonValueKind.String)
            return result == expected.GetString();
        return result != "ask-back" && !answer.ContainsKey("unclear")
            && ExpectedReading.AreAll([.. expected.EnumerateArray()], answer["readings"]!.AsArray());
    }

    // Part of what was said and a question about the rest is no mistake, so long as that part is right.
    private static bool AsksBack(JsonObject answer, ImmutableArray<JsonElement> accepted) =>
        (string)answer["result"]! == "ask-back" || (answer.ContainsKey("unclear") && accepted.Any(expected =>
            expected.ValueKind == JsonValueKind.Array && answer["readings"]!.AsArray().All(reading =>
                expected.EnumerateArray().Any(one => ExpectedReading.Is(one, reading!)))));
}
