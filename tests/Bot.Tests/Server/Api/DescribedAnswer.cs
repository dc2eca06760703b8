using System.Globalization;
using System.Text.Json;
using Microsoft.OpenApi;

namespace DxAssistant.Bot.Tests.Server.Api;

/// <summary>
/// Holds real answers to the description of the API. Stricter than its schemas: what is said but not described is
/// wrong too.
/// </summary>
internal sealed class DescribedAnswer(OpenApiDocument document)
{
    /// <exception cref="InvalidDataException">The answer is not as described; the message says where.</exception>
    public void Holds(HttpMethod method, string path, int status, string body)
    {
        var answers = document.Paths[path].Operations![method].Responses!;
        if (!answers.TryGetValue(status.ToString(CultureInfo.InvariantCulture), out var answer))
            throw new InvalidDataException($"{method} {path}: status {status} is not described: {body}");
        var schema = answer.Content!.Values.Single().Schema!;
        Check(schema, JsonDocument.Parse(body).RootElement, $"{method} {path} {status}");
    }

    private static void Check(IOpenApiSchema schema, JsonElement value, string at)
    {
        var choices = (schema.AnyOf ?? []).Concat(schema.OneOf ?? []).ToList();
        if (choices.Count > 0) { CheckChoice(choices, value, at); return; }
        CheckType(schema, value, at);
        if (schema.Enum is { Count: > 0 } named && value.ValueKind != JsonValueKind.Null
            && !named.Any(one => one?.ToString() == value.ToString()))
            throw new InvalidDataException($"{at}: {value} is none of {string.Join(", ", named)}");
        if (value.ValueKind == JsonValueKind.Array && schema.Items is { } items)
            foreach (var (one, place) in value.EnumerateArray()
                .Select((one, place) => (one, place))) Check(items, one, $"{at}[{place}]");
        if (value.ValueKind == JsonValueKind.Object) CheckMembers(schema, value, at);
    }

    private static void CheckChoice(List<IOpenApiSchema> choices, JsonElement value, string at)
    {
        var problems = new List<string>();
        foreach (var choice in choices)
        {
            try
            {
                Check(choice, value, at);
                return;
            }
            catch (InvalidDataException problem)
            {
                problems.Add(problem.Message);
            }
        }

        throw new InvalidDataException(
            $"{at}: {value} fits none of the forms described: {string.Join("; ", problems)}");
    }

    private static void CheckType(IOpenApiSchema schema, JsonElement value, string at)
    {
        if (schema.Type is not { } type) return;
        var seen = value.ValueKind switch
        {
            JsonValueKind.Object => JsonSchemaType.Object, JsonValueKind.Array => JsonSchemaType.Array,
            JsonValueKind.String => JsonSchemaType.String, JsonValueKind.Null => JsonSchemaType.Null,
            JsonValueKind.Number =>
                value.TryGetInt64(out _) ? JsonSchemaType.Integer | JsonSchemaType.Number : JsonSchemaType.Number,
            _ => JsonSchemaType.Boolean,
        };
        if ((type & seen) == 0) throw new InvalidDataException($"{at}: {value} is no {type}");
    }

    private static void CheckMembers(IOpenApiSchema schema, JsonElement value, string at)
    {
        foreach (string needed in schema.Required ?? new HashSet<string>())
            if (!value.TryGetProperty(needed, out _)) throw new InvalidDataException($"{at}: {needed} is not there");
        foreach (var member in value.EnumerateObject())
        {
            if (schema.Properties?.TryGetValue(member.Name, out var described) == true)
                Check(described, member.Value, $"{at}.{member.Name}");
            else if (schema.AdditionalProperties is { } any) Check(any, member.Value, $"{at}.{member.Name}");
            else if (schema.Type is not null) throw new InvalidDataException($"{at}: {member.Name} is not described");
        }
    }
}
