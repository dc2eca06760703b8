using System.Globalization;
using System.Text.Json.Nodes;

namespace DxAssistant.Cases.Log;

/// <summary>
/// A place in JSON, by its pointer (RFC 6901). Names with <c>/</c> or <c>~</c> do not occur in events.
/// </summary>
internal static class JsonPlace
{
    /// <summary>What stands there; null when the place is not there.</summary>
    public static JsonNode? Find(JsonNode root, string pointer) =>
        pointer.Split('/')[1..].Aggregate((JsonNode?)root, Step);

    /// <summary>Puts text there; does nothing when the place is not there.</summary>
    public static void Put(JsonNode root, string pointer, string text)
    {
        int cut = pointer.LastIndexOf('/');
        if (cut >= 0 && (cut == 0 ? root : Find(root, pointer[..cut])) is JsonObject holder)
            holder[pointer[(cut + 1)..]] = text;
    }

    private static JsonNode? Step(JsonNode? from, string name) => from switch
    {
        JsonObject holder => holder[name],
        JsonArray list when int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out int at)
            && at < list.Count => list[at],
        _ => null,
    };
}
