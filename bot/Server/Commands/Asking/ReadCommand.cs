using System.CommandLine;
using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;
using DxAssistant.Server.Commands.Scoring;

namespace DxAssistant.Server.Commands.Asking;

/// <summary><c>read</c>: words in, readings out.</summary>
internal static class ReadCommand
{
    public static Command Make(Streams streams)
    {
        var score = ScoreFile.Option();
        var figures = ScoreFile.Figures();
        var read = new Command("read",
            """JSON Lines: {"text","asked"?} in, readings in SI and as typed out.""") { score, figures };
        read.SetAction((call, cancel) => call.GetValue(score) is { Length: > 0 } files
            ? Task.FromResult(ScoreFile.Run(files, ReadingMarker.Mark, streams, call.GetValue(figures)))
            : JsonLines.RunAsync(streams, Answer, cancel));
        return read;
    }

    internal static JsonObject Answer(JsonElement request)
    {
        string? asked = Request.OptionalText(request, "asked");
        if (!AskedQuantity.TryContext(asked, out var context))
        {
            throw new RequestException(
                $"\"asked\" is neither a quantity nor a unit: {asked}; send such as resistance, voltage, °C or kΩ");
        }

        return Shown(ReadingParser.Parse(Request.Text(request, "text"), context));
    }

    private static JsonObject Shown(ReadingResult result) => result switch
    {
        ReadingResult.Readings readings => Shown(readings),
        ReadingResult.AskBack back => new JsonObject
        {
            ["result"] = "ask-back",
            ["reason"] = back.Reason,
            ["readings"] = new JsonArray(),
            ["meanings"] = new JsonArray([.. back.Meanings.Select(meaning => Array(meaning.Readings))]),
        },
        ReadingResult.NotUnderstood not => new JsonObject
        {
            ["result"] = "ask-back",
            ["reason"] = not.Reason,
            ["readings"] = new JsonArray(),
            ["accepted"] = new JsonArray([.. not.Accepted.Select(unit => (JsonNode)unit.Symbol)]),
        },
        _ => throw new ArgumentOutOfRangeException(nameof(result), result, "no such result"),
    };

    // One word for the whole only where every reading is of that kind.
    private static JsonObject Shown(ReadingResult.Readings readings)
    {
        var states = readings.List.Select(reading => reading.State).Distinct().ToList();
        var shown = new JsonObject
        {
            ["result"] = Word(states.Count == 1 ? states[0] : ReadingState.Number),
            ["readings"] = Array(readings.List),
        };
        if (readings.Unclear is { } unclear) shown["unclear"] = unclear.Reason;
        return shown;
    }

    private static string Word(ReadingState state) => state switch
    {
        ReadingState.OpenCircuit => "open-circuit",
        ReadingState.ShortCircuit => "short",
        _ => "readings",
    };

    internal static JsonArray Array(IEnumerable<Reading> readings) => new([.. readings.Select(Shown)]);

    private static JsonNode Shown(Reading reading)
    {
        var shown = new JsonObject
        {
            ["quantity"] = Words.Kebab(reading.Unit.Kind.ToString()),
            ["state"] = reading.State == ReadingState.Number ? "number" : Word(reading.State),
        };
        if (reading.State == ReadingState.Number)
        {
            shown["value"] = reading.Value;
            shown["unit"] = Words.SiUnit(reading.Unit.Kind);
        }

        shown["typed"] = reading.Said;
        shown["typedUnit"] = reading.Unit.Symbol;
        if (reading.Label is { } label) shown["label"] = label;
        return shown;
    }
}
