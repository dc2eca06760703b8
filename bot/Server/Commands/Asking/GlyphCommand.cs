using System.CommandLine;
using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Knowledge.Glyphs;
using DxAssistant.Server.Commands.Scoring;

namespace DxAssistant.Server.Commands.Asking;

/// <summary><c>glyph</c>: what a display was said to show, and what looks like it.</summary>
internal static class GlyphCommand
{
    public static Command Make(Streams streams)
    {
        var score = ScoreFile.Option();
        var figures = ScoreFile.Figures();
        var glyph = new Command(
            "glyph", """JSON Lines: {"text"} in, {"canonical","alternatives","flashing"?,"blinks"?} out.""") { score,
                figures };
        glyph.SetAction((call, cancel) => call.GetValue(score) is { Length: > 0 } files
            ? Task.FromResult(ScoreFile.Run(files, GlyphMarker.Mark, streams, call.GetValue(figures)))
            : JsonLines.RunAsync(streams, Answer, cancel));
        return glyph;
    }

    internal static JsonObject Answer(JsonElement request)
    {
        var reading = GlyphReader.Read(Request.Text(request, "text"));
        var shown = new JsonObject
        {
            ["canonical"] = reading.Canonical,
            ["alternatives"] = new JsonArray([.. reading.Alternatives.Select(code => (JsonNode)code)]),
        };
        if (reading.Flashing is { } flashing) shown["flashing"] = flashing;
        if (reading.Blinks is { } blinks) shown["blinks"] = blinks;
        if (!reading.Lamps.IsEmpty)
        {
            shown["lamps"] = new JsonArray(
                [.. reading.Lamps.Select(l => (JsonNode)new JsonObject { ["lamp"] = l.Lamp, ["blinks"] = l.Blinks })]);
        }

        return shown;
    }
}
