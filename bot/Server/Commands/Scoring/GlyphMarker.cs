using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Server.Commands.Asking;

namespace DxAssistant.Server.Commands.Scoring;

/// <summary>Marks an answer of <c>glyph</c>.</summary>
/// <remarks>A line holds <c>text</c> and what it should come to: <c>canonical</c> ("" for lamps alone), and where they
/// count <c>flashing</c>, <c>blinks</c>, <c>lamps</c> (lamp to count). A code that is offered as a look-alike is asked
/// back.</remarks>
internal static class GlyphMarker
{
    public static Marked Mark(JsonElement line)
    {
        var answer = GlyphCommand.Answer(line);
        string expected = Request.Text(line, "canonical");
        bool rest = Agrees(line, answer, "flashing") && Agrees(line, answer, "blinks") && AgreeLamps(line, answer);
        var mark = !rest ? Scoring.Mark.Wrong
            : (string)answer["canonical"]! == expected ? Scoring.Mark.Right
            : answer["alternatives"]!.AsArray().Any(code => (string)code! == expected) ? Scoring.Mark.AskedBack
            : Scoring.Mark.Wrong;
        return new Marked(mark, Request.Text(line, "text"), line.GetRawText(), answer.ToJsonString(JsonLines.Plain));
    }

    private static bool Agrees(JsonElement line, JsonObject answer, string name) =>
        !line.TryGetProperty(name, out var expected) || expected.GetRawText() == answer[name]?.ToJsonString();

    private static bool AgreeLamps(JsonElement line, JsonObject answer) =>
        !line.TryGetProperty("lamps", out var lamps) || lamps.EnumerateObject().All(lamp =>
            answer["lamps"]?.AsArray().Any(shown => (string)shown!["lamp"]! == lamp.Name
                && shown["blinks"]!.ToJsonString() == lamp.Value.GetRawText()) == true);
}
