using System.Text.Json;
using System.Text.RegularExpressions;

namespace DxAssistant.Bot.Tests.Server.Workbench;

/// <summary>Checks JSON against the words of JSON Schema (draft 4) that the schema of SARIF uses.</summary>
/// <remarks>A word it does not know fails, so that nothing of the schema is passed over in silence.</remarks>
internal static class JsonSchema
{
    private static readonly HashSet<string> Known =
        ["$schema", "id", "title", "description", "default", "format", "definitions", "type", "enum", "$ref",
            "required", "properties", "additionalProperties", "items", "minItems", "uniqueItems", "minimum", "maximum",
            "pattern", "anyOf", "oneOf"];

    public static IEnumerable<string> Check(JsonElement value, JsonElement schema, JsonElement root, string at)
    {
        foreach (JsonProperty word in schema.EnumerateObject())
        {
            if (!Known.Contains(word.Name)) yield return $"{at}: `{word.Name}` is not understood";
            foreach (string wrong in Check(value, schema, word, root, at)) yield return wrong;
        }
    }

    private static IEnumerable<string> Check(JsonElement value, JsonElement schema, JsonProperty word, JsonElement root,
        string at)
    {
        switch (word.Name)
        {
            case "$ref":
                JsonElement meant = root.GetProperty("definitions").GetProperty(word.Value.GetString()!.Split('/')[^1]);
                return Check(value, meant, root, at);
            case "type":
                return IsOf(value, word.Value) ? [] : [$"{at}: no {word.Value}"];
            case "anyOf":
                return word.Value.EnumerateArray().Any(way => !Check(value, way, root, at).Any())
                    ? []
                    : [$"{at}: fits none of the ways"];
            case "oneOf":
                return word.Value.EnumerateArray().Count(way => !Check(value, way, root, at).Any()) == 1
                    ? []
                    : [$"{at}: does not fit just one of the ways"];
            case "pattern":
                return Regex.IsMatch(value.GetString()!, word.Value.GetString()!)
                    ? []
                    : [$"{at}: {value} is not as the pattern"];
            case "maximum":
                return value.GetDouble() <= word.Value.GetDouble() ? [] : [$"{at}: too large"];
            case "enum":
                return word.Value.EnumerateArray().Any(choice => JsonElement.DeepEquals(choice, value))
                    ? []
                    : [$"{at}: {value} is no choice"];
            case "required" when value.ValueKind == JsonValueKind.Object:
                return word.Value.EnumerateArray().Where(name => !value.TryGetProperty(name.GetString()!, out _))
                    .Select(name => $"{at}: {name} is missing");
            case "properties" when value.ValueKind == JsonValueKind.Object:
                return value.EnumerateObject().Where(part => word.Value.TryGetProperty(part.Name, out _))
                    .SelectMany(
                        part => Check(part.Value, word.Value.GetProperty(part.Name), root, $"{at}.{part.Name}"));
            case "additionalProperties" when value.ValueKind == JsonValueKind.Object:
                JsonProperty[] others = [.. value.EnumerateObject().Where(part =>
                    !schema.TryGetProperty("properties", out JsonElement named)
                        || !named.TryGetProperty(part.Name, out _))];
                return word.Value.ValueKind == JsonValueKind.True ? []
                    : word.Value.ValueKind == JsonValueKind.False
                    ? others.Select(part => $"{at}: {part.Name} is not in the schema")
                    : others.SelectMany(part => Check(part.Value, word.Value, root, $"{at}.{part.Name}"));
            case "items" when value.ValueKind == JsonValueKind.Array:
                return value.EnumerateArray()
                    .SelectMany((item, place) => Check(item, word.Value, root, $"{at}[{place}]"));
            case "minItems":
                return value.GetArrayLength() >= word.Value.GetInt32() ? [] : [$"{at}: too few"];
            case "uniqueItems":
                string[] items = [.. value.EnumerateArray().Select(item => item.GetRawText())];
                return !word.Value.GetBoolean() || items.Distinct().Count() == items.Length
                    ? []
                    : [$"{at}: twice the same"];
            case "minimum":
                return value.GetDouble() >= word.Value.GetDouble() ? [] : [$"{at}: too small"];
            default:
                return [];
        }
    }

    private static bool IsOf(JsonElement value, JsonElement types) => types.ValueKind == JsonValueKind.Array
        ? types.EnumerateArray().Any(type => IsOf(value, type))
        : TypeOf(value) == types.GetString()
            || (types.GetString() == "number" && value.ValueKind == JsonValueKind.Number);

    private static string TypeOf(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Object => "object",
        JsonValueKind.Array => "array",
        JsonValueKind.String => "string",
        JsonValueKind.Number => value.TryGetInt64(out _) ? "integer" : "number",
        JsonValueKind.Null => "null",
        _ => "boolean",
    };
}
