using System.Text.Json;
using System.Text.Json.Nodes;

namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>
/// Changes JSON so that it stays JSON: other values, lost and strange names, deep and long ones. Now and then it is
/// changed as any text is.
/// </summary>
internal static class JsonChanges
{
    private static readonly string[] Values =
    [
        "null", "true", "0", "-1", "1.5", "1e999", "99999999999999999999", "\"\"", "\"x\"", "[]", "{}", "[null]",
        "[[]]", "\"\\ud800\"", "\"\\u0000\"", "\"2029-13-45\"",
        "\"0001-01-01\"", "\"9999-12-31T23:59:59Z\"", "\"-0\"", "\"__proto__\"", "{\"$type\":\"System.Object\"}",
        "{\"form\":\"earlier\",\"work\":[]}", "\"../../x\"",
    ];

    /// <summary>A changed text of the pool.</summary>
    /// <remarks>The first line of a text stays: it says where the JSON goes.</remarks>
    public static string Make(Random random, IReadOnlyList<string> pool)
    {
        string text = pool[random.Next(pool.Count)];
        int end = text.IndexOf('\n', StringComparison.Ordinal) + 1;
        return text[..end] + Body(random, text[end..], pool);
    }

    private static string Body(Random random, string body, IReadOnlyList<string> pool)
    {
        string[] texts = [body, .. pool.Take(1)];
        if (random.Next(5) == 0 || Parsed(body) is not { } json) return TextChanges.Make(random, texts);
        try
        {
            return Changed(random, json);
        }
        catch (Exception error) when (error is ArgumentException or InvalidOperationException)
        {
            // Names that are doubled and halves of characters cannot be held as nodes: they are changed as text.
            return TextChanges.Make(random, texts);
        }
    }

    private static string Changed(Random random, JsonNode json)
    {
        for (int times = random.Next(1, 4); times > 0; times--)
        {
            JsonNode[] places = [.. Inside(json)];
            json = places.Length == 0 || random.Next(20) == 0
                ? Odd(random)!
                : Change(random, json, places[random.Next(places.Length)]);
            if (json is null) return "null";
        }

        return json.ToJsonString();
    }

    private static JsonNode Change(Random random, JsonNode json, JsonNode place)
    {
        switch (place)
        {
            case JsonObject holder when holder.Count > 0:
                string name = holder.ElementAt(random.Next(holder.Count)).Key;
                JsonNode? old = holder[name];
                holder.Remove(name);
                if (random.Next(4) > 0) holder[random.Next(8) == 0 ? name.ToUpperInvariant() : name] = New(random, old);
                break;
            case JsonArray list when list.Count > 0:
                int at = random.Next(list.Count);
                JsonNode? one = list[at];
                list.RemoveAt(at);
                for (int times = random.Next(4); times > 0; times--)
                    list.Add(times == 1 ? New(random, one) : one?.DeepClone());
                break;
        }

        return json;
    }

    private static JsonNode? New(Random random, JsonNode? old) => random.Next(6) switch
    {
        0 => Deep(random.Next(1, 70)),
        1 when old is JsonValue value && value.TryGetValue(out string? words) =>
            JsonValue.Create(TextChanges.Make(random, [words])),
        2 => JsonValue.Create(new string('x', random.Next(1, 5000))),
        3 => old?.DeepClone(),
        _ => Odd(random),
    };

    private static JsonNode? Odd(Random random) => Parsed(Values[random.Next(Values.Length)]);

    private static JsonNode Deep(int depth)
    {
        JsonNode made = new JsonObject();
        for (; depth > 0; depth--) made = depth % 2 == 0 ? new JsonArray(made) : new JsonObject { ["a"] = made };
        return made;
    }

    private static IEnumerable<JsonNode> Inside(JsonNode json)
    {
        yield return json;
        IEnumerable<JsonNode?> parts =
            json switch { JsonObject holder => holder.Select(part => part.Value), JsonArray list => list, _ => [] };
        foreach (JsonNode inner in parts.OfType<JsonNode>().SelectMany(Inside)) yield return inner;
    }

    private static JsonNode? Parsed(string text)
    {
        try
        {
            return JsonNode.Parse(text);
        }
        catch (Exception error) when (error is JsonException or ArgumentException or InvalidOperationException)
        {
            return null;
        }
    }
}
