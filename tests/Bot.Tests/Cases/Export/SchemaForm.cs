using System.Text.Json;
using System.Text.RegularExpressions;

namespace DxAssistant.Bot.Tests.Cases.Export;

/// <summary>Holds JSON to a schema: as much of JSON Schema 2020-12 as the schema of a case uses; any other word of it
/// throws.</summary>
internal sealed class SchemaForm(JsonElement root)
{
    public static SchemaForm Read(string file)
    {
        using var json = JsonDocument.Parse(File.ReadAllText(file));
        return new SchemaForm(json.RootElement.Clone());
    }

    public bool Fits(JsonElement value) => Fits(root, value);

    private bool Fits(JsonElement schema, JsonElement value) =>
        schema.EnumerateObject().All(word => Fits(word.Name, word.Value, schema, value));

    private bool Fits(string word, JsonElement rule, JsonElement schema, JsonElement value) => word switch
    {
        "$schema" or "$defs" or "title" or "description" => true,
        "$ref" => Fits(Find(rule.GetString()!), value),
        "const" => JsonElement.DeepEquals(rule, value),
        "type" => rule.ValueKind == JsonValueKind.Array
            ? rule.EnumerateArray().Any(one => IsOf(one.GetString()!, value)) : IsOf(rule.GetString()!, value),
        "pattern" => value.ValueKind != JsonValueKind.String || Regex.IsMatch(value.GetString()!, rule.GetString()!),
        "minLength" => value.ValueKind != JsonValueKind.String || value.GetString()!.Length >= rule.GetInt32(),
        "minimum" => value.ValueKind != JsonValueKind.Number || value.GetDouble() >= rule.GetDouble(),
        "minItems" => value.ValueKind != JsonValueKind.Array || value.GetArrayLength() >= rule.GetInt32(),
        "items" => value.ValueKind != JsonValueKind.Array || value.EnumerateArray().All(item => Fits(rule, item)),
        _ => value.ValueKind != JsonValueKind.Object || FitsObject(word, rule, schema, value),
    };

    private bool FitsObject(string word, JsonElement rule, JsonElement schema, JsonElement value) => word switch
    {
        "required" => rule.EnumerateArray().All(name => value.TryGetProperty(name.GetString()!, out _)),
        "properties" => rule.EnumerateObject().All(
            p => !value.TryGetProperty(p.Name, out var held) || Fits(p.Value, held)),
        "additionalProperties" => value.EnumerateObject().All(
            held => schema.GetProperty("properties").TryGetProperty(held.Name, out _)),
        _ => throw new NotSupportedException($"the schema uses {word}"),
    };

    private JsonElement Find(string pointer) =>
        pointer.Split('/')[1..].Aggregate(root, (holder, name) => holder.GetProperty(name));

    private static bool IsOf(string type, JsonElement value) => type switch
    {
        "object" => value.ValueKind == JsonValueKind.Object,
        "array" => value.ValueKind == JsonValueKind.Array,
        "string" => value.ValueKind == JsonValueKind.String,
        "null" => value.ValueKind == JsonValueKind.Null,
        "integer" => value.ValueKind == JsonValueKind.Number && value.TryGetInt64(out _),
        _ => throw new NotSupportedException($"the schema uses the type {type}"),
    };
}
