using System.Text.Json;

namespace DxAssistant.Server.Commands.Asking;

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

    /// <summary>A string that stands by itself in a list.</summary>
    /// <exception cref="RequestException">It is not a string.</exception>
    public static string Name(JsonElement item) => item.ValueKind == JsonValueKind.String
        ? item.GetString()! : throw new RequestException($"{item.GetRawText()} must be a string");

    /// <exception cref="RequestException">It is not an object, or has a member twice.</exception>
    public static IEnumerable<JsonProperty> Members(JsonElement part, string name)
    {
        if (part.ValueKind != JsonValueKind.Object) throw new RequestException($"\"{name}\" must be an object");
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (JsonProperty member in part.EnumerateObject())
            yield return seen.Add(member.Name)
                ? member : throw new RequestException($"\"{name}\" has \"{member.Name}\" twice");
    }

    /// <exception cref="RequestException">It is missing or not a list.</exception>
    public static IEnumerable<JsonElement> Items(JsonElement request, string name) =>
        Part(request, name) is { ValueKind: JsonValueKind.Array } list
            ? list.EnumerateArray()
            : throw new RequestException($"\"{name}\" must be a list");

    /// <exception cref="RequestException">It is there but not a list.</exception>
    public static IEnumerable<JsonElement> OptionalItems(JsonElement request, string name) =>
        request.TryGetProperty(name, out _) ? Items(request, name) : [];
}
