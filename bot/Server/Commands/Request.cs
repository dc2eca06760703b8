using System.Text.Json;

namespace DxAssistant.Server.Commands;

/// <summary>Reads the parts of a request on a line.</summary>
internal static class Request
{
    /// <exception cref="RequestException">It is missing.</exception>
    public static JsonElement Part(JsonElement request, string name) =>
        request.ValueKind == JsonValueKind.Object && request.TryGetProperty(name, out var part)
            ? part
            : throw new RequestException($"the request has no \"{name}\"");

    /// <exception cref="RequestException">It is missing or not a string.</exception>
    public static string Text(JsonElement request, string name) =>
        OptionalText(request, name) ?? throw new RequestException($"the request has no \"{name}\"");

    /// <exception cref="RequestException">It is there but not a string.</exception>
    public static string? OptionalText(JsonElement request, string name)
    {
        if (request.ValueKind != JsonValueKind.Object)
            throw new RequestException("a part of the request is not a JSON object");
        if (!request.TryGetProperty(name, out var value) || value.ValueKind == JsonValueKind.Null) return null;
        return value.ValueKind == JsonValueKind.String
            ? value.GetString() : throw new RequestException($"\"{name}\" must be a string");
    }

    /// <exception cref="RequestException">It is missing or not a number.</exception>
    public static double Number(JsonElement request, string name) =>
        Part(request, name) is { ValueKind: JsonValueKind.Number } number
            ? number.GetDouble()
            : throw new RequestException($"\"{name}\" must be a number");

    /// <exception cref="RequestException">It is missing or not a list.</exception>
    public static IEnumerable<JsonElement> Items(JsonElement request, string name) =>
        Part(request, name) is { ValueKind: JsonValueKind.Array } list
            ? list.EnumerateArray()
            : throw new RequestException($"\"{name}\" must be a list");

    /// <exception cref="RequestException">It is there but not a list.</exception>
    public static IEnumerable<JsonElement> OptionalItems(JsonElement request, string name) =>
        request.TryGetProperty(name, out _) ? Items(request, name) : [];
}
