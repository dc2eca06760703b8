using System.Collections.Frozen;
using System.Reflection;
using System.Text.Json;
using Microsoft.Bot.Schema;
using Newtonsoft.Json;

namespace DxAssistant.Server.Channels;

/// <summary>Whether the names in an activity mean the same to every reader.</summary>
/// <remarks>The adapter's reader takes names in any case and keeps the last of two; a check that read another one than
/// the adapter would check nothing.</remarks>
internal static class ActivityNames
{
    private static readonly FrozenSet<string> OfActivity = NamesOf(typeof(Activity));
    private static readonly FrozenSet<string> OfConversation = NamesOf(typeof(ConversationAccount));

    /// <summary>The first name that is doubled, spelled in another case than the schema's, or an instruction to the
    /// reader (<c>$…</c>); null when there is none.</summary>
    public static string? FirstDoubtful(JsonElement activity) =>
        FirstDoubtful(activity, OfActivity)
        ?? (activity.TryGetProperty("conversation", out var conversation)
            ? FirstDoubtful(conversation, OfConversation) : null);

    private static string? FirstDoubtful(JsonElement element, FrozenSet<string> schema)
    {
        if (element.ValueKind != JsonValueKind.Object) return null;
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        return element.EnumerateObject().Select(property => property.Name)
            .FirstOrDefault(name => !seen.Add(name) || name.StartsWith('$') || IsOtherCase(name, schema));
    }

    private static bool IsOtherCase(string name, FrozenSet<string> schema) =>
        schema.TryGetValue(name, out string? spelled) && !string.Equals(spelled, name, StringComparison.Ordinal);

    private static FrozenSet<string> NamesOf(Type type) => type.GetProperties()
        .Select(property => property.GetCustomAttribute<JsonPropertyAttribute>()?.PropertyName).OfType<string>()
        .ToFrozenSet(StringComparer.OrdinalIgnoreCase);
}
