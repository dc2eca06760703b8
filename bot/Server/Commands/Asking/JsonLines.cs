using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace DxAssistant.Server.Commands.Asking;

/// <summary>JSON Lines: one request a line in, one answer a line out, in the same order, each flushed at
/// once.</summary>
internal static class JsonLines
{
    /// <summary>Answers are for programs and for people reading over their shoulder: Ω stays Ω.</summary>
    public static JsonSerializerOptions Plain { get; } = new(JsonSerializerDefaults.Web)
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Answers every line until the input ends. Blank lines are passed over.</summary>
    /// <returns>0, or 1 when any line was answered with an error.</returns>
    public static Task<int> RunAsync(Streams streams, Func<JsonElement, JsonObject> answer, CancellationToken cancel) =>
        RunAsync(streams, (request, _) => Task.FromResult(answer(request)), cancel);

    /// <inheritdoc cref="RunAsync(Streams, Func{JsonElement, JsonObject}, CancellationToken)"/>
    public static async Task<int> RunAsync(
        Streams streams, Func<JsonElement, CancellationToken, Task<JsonObject>> answer, CancellationToken cancel)
    {
        int code = ExitCode.Done;
        while (await streams.In.ReadLineAsync(cancel) is { } line)
        {
            if (string.IsNullOrWhiteSpace(line)) continue;
            var result = await AnswerAsync(line, answer, cancel);
            if (result.ContainsKey("error")) code = ExitCode.Problems;
            await streams.Out.WriteLineAsync(result.ToJsonString(Plain).AsMemory(), cancel);
            await streams.Out.FlushAsync(cancel);
        }

        return code;
    }

    /// <summary>An answer that says what was wrong with the request.</summary>
    public static JsonObject Error(string line, JsonElement request = default)
    {
        var error = new JsonObject { ["error"] = line };
        if (request.ValueKind == JsonValueKind.Object && request.TryGetProperty("id", out var id))
            error.Insert(0, "id", JsonNode.Parse(id.GetRawText()));
        return error;
    }

    private static async Task<JsonObject> AnswerAsync(
        string line, Func<JsonElement, CancellationToken, Task<JsonObject>> answer, CancellationToken cancel)
    {
        try
        {
            using var request = JsonDocument.Parse(line);
            if (request.RootElement.ValueKind != JsonValueKind.Object)
                return Error("the line is not a JSON object: send one {…} a line");
            return await AnswerObjectAsync(request.RootElement, answer, cancel);
        }
        catch (JsonException error)
        {
            return Error($"the line is not JSON: {error.Message.Split('.')[0]}");
        }
    }

    private static async Task<JsonObject> AnswerObjectAsync(
        JsonElement request, Func<JsonElement, CancellationToken, Task<JsonObject>> answer, CancellationToken cancel)
    {
        try
        {
            return await answer(request, cancel);
        }
        catch (RequestException error)
        {
            return Error(error.Message, request);
        }
        catch (InvalidOperationException error) when (
            error.Source?.StartsWith("System.Text.Json", StringComparison.Ordinal) == true)
        {
            return Error("a value of the request has the wrong type, or text that is not Unicode", request);
        }
    }
}
