using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Cases.Log;

/// <summary>Keeps people's own words beside an event, so that they can be blanked later without a break in the chain of
/// hashes: in the event stands a salted digest, beside it the words and their salt.</summary>
/// <remarks>Without the salt nobody can try out names against the digest.</remarks>
internal static class Veil
{
    /// <summary>What is read where words were blanked.</summary>
    public const string Removed = "[removed]";

    private const string Mark = "sha256:";
    private const int SaltBytes = 16;

    /// <summary>Writes an event down.</summary>
    public static EntryText Draw(CaseEvent happened)
    {
        string json = EventJson.Write(happened);
        if (!OwnWords.MayBeIn(happened)) return new EntryText(json, null);
        var entry = JsonNode.Parse(json)!;
        var aside = OwnWords.In(entry).Select(at => Take(entry, at)).OfType<AsideWords>().ToImmutableArray();
        return aside.IsEmpty
            ? new EntryText(json, null)
            : new EntryText(entry.ToJsonString(), JsonSerializer.Serialize(aside, JsonSerializerOptions.Web));
    }

    /// <summary>Reads an event back, with its words where they still are.</summary>
    /// <exception cref="JsonException">That is not an event this program knows.</exception>
    /// <exception cref="AlteredException">The words are not those that were written down.</exception>
    public static CaseEvent Lift(EntryText text)
    {
        if (text.Aside is null) return EventJson.Read(text.Body);
        var entry = JsonNode.Parse(text.Body)!;
        foreach (var words in Words(text.Aside)) PutBack(entry, words);
        return EventJson.Read(entry.ToJsonString());
    }

    /// <summary>The same without the words: they cannot be read or guessed any more.</summary>
    public static EntryText Blank(EntryText text) => text.Aside is null ? text
        : text
            with { Aside = JsonSerializer.Serialize(Words(text.Aside)
                .Select(words => new AsideWords(words.At)), JsonSerializerOptions.Web) };

    /// <inheritdoc cref="Blank(EntryText)" />
    public static LogRow Blank(LogRow row) => row with { Aside = Blank(new EntryText(row.Body, row.Aside)).Aside };

    private static AsideWords? Take(JsonNode entry, string at)
    {
        if (JsonPlace.Find(entry, at) is not JsonValue found || !found.TryGetValue(out string? value)) return null;
        string salt = Convert.ToBase64String(RandomNumberGenerator.GetBytes(SaltBytes));
        JsonPlace.Put(entry, at, Digest(salt, value));
        return new AsideWords(at, salt, value);
    }

    private static void PutBack(JsonNode entry, AsideWords words)
    {
        if (words is { Salt: { } salt, Value: { } value })
        {
            if ((string?)JsonPlace.Find(entry, words.At) != Digest(salt, value))
                throw new AlteredException($"its words at {words.At} are not those that were said");
            JsonPlace.Put(entry, words.At, value);
        }
        else
        {
            JsonPlace.Put(entry, words.At, Removed);
        }
    }

    private static ImmutableArray<AsideWords> Words(string aside) =>
        JsonSerializer.Deserialize<ImmutableArray<AsideWords>>(aside, JsonSerializerOptions.Web);

    private static string Digest(string salt, string value) => Mark + Convert.ToHexStringLower(
        SHA256.HashData([.. Convert.FromBase64String(salt), .. Encoding.UTF8.GetBytes(value)]));
}
