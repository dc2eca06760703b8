using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Knowledge.Calculations;

namespace DxAssistant.Server.Commands.Asking;

/// <summary><c>calc</c>: one named calculation a line.</summary>
internal static class CalcCommand
{
    public static Command Make(Streams streams)
    {
        var calc = new Command(
            "calc",
            """JSON Lines: {"id","inputs":{name:{"value","unit"}}} in, {"id","result":{…}} or {"id","status","message"} out.""");
        calc.SetAction((_, cancel) => JsonLines.RunAsync(streams, Answer, cancel));
        return calc;
    }

    internal static JsonObject Answer(JsonElement request)
    {
        string id = Request.Text(request, "id");
        if (!request.TryGetProperty("inputs", out var given) || given.ValueKind != JsonValueKind.Object)
        {
            return Refused(id, "invalid-input", """the request has no "inputs": {name: {"value", "unit"}}""");
        }

        try
        {
            var inputs = ImmutableSortedDictionary.CreateBuilder<string, CalculationValue>(StringComparer.Ordinal);
            foreach (var input in given.EnumerateObject()) inputs[input.Name] = CalculationJson.Read(input);
            return Shown(id, CalculationCatalogue.Run(new CalculationRequest(id, inputs.ToImmutable())));
        }
        catch (RequestException error)
        {
            // The line is well formed, what stands in it is not a value.
            return Refused(id, "invalid-input", error.Message);
        }
    }

    private static JsonObject Shown(string id, CalculationResult result) => result switch
    {
        CalculationResult.Answer answer => new JsonObject
        {
            ["id"] = id,
            ["result"] = new JsonObject(
                answer.Values.Select(
                term => KeyValuePair.Create(term.Symbol, (JsonNode?)CalculationJson.Write(term.Value)))),
        },
        CalculationResult.InvalidInput invalid => Refused(id, "invalid-input", invalid.Message),
        CalculationResult.OutOfRange outside => Refused(id, "out-of-range", outside.Message),
        _ => throw new ArgumentOutOfRangeException(nameof(result), result, "no such result"),
    };

    private static JsonObject Refused(string id, string status, string message) =>
        new() { ["id"] = id, ["status"] = status, ["message"] = message };
}
