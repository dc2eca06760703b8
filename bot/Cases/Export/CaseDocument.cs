using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Cases.Log;

namespace DxAssistant.Cases.Export;

/// <summary>A whole case as one JSON document, in the form of <c>case.schema.json</c>. Taken in elsewhere it is the same
/// case, word for word, with the same hashes.</summary>
/// <param name="Id">The name of the case.</param>
public sealed record CaseDocument(string Id, ImmutableArray<LogRow> Rows)
{
    private const string Format = "dxassistant-case";
    private const int Version = 1;
    private const string TimeForm = "yyyy-MM-dd'T'HH:mm:ss.fff'Z'";

    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    /// <summary>The document as text.</summary>
    public string Write() => new JsonObject
    {
        ["format"] = Format,
        ["version"] = Version,
        ["case"] = Id,
        ["entries"] = new JsonArray(Rows.Select(row => (JsonNode?)Entry(row)).ToArray()),
    }.ToJsonString(Indented) + "\n";

    /// <summary>Reads a document; nothing is checked but its form.</summary>
    /// <exception cref="CaseFileException">It is not such a document.</exception>
    public static CaseDocument Read(string text)
    {
        try
        {
            using var json = JsonDocument.Parse(text);
            var root = json.RootElement;
            if (root.GetProperty("format").GetString() != Format) throw new FormatException("it has another format");
            int version = root.GetProperty("version").GetInt32();
            if (version != Version)
                throw new FormatException($"it has version {version}, this program knows {Version}: use a newer program");
            string id = Text(root, "case");
            if (!CaseId.IsWellFormed(id)) throw new FormatException("its case has no fit name");
            return new CaseDocument(id, [.. root.GetProperty("entries").EnumerateArray().Select(Row)]);
        }
        catch (Exception error) when (error is JsonException or KeyNotFoundException or FormatException
            or InvalidOperationException)
        {
            throw new CaseFileException($"that is not an exported case ({error.Message})", error);
        }
    }

    /// <summary>The events, checked.</summary>
    /// <exception cref="CaseFileException">An entry was altered or is missing.</exception>
    public ImmutableArray<StoredEvent> Open() => Rows.IsEmpty
        ? throw new CaseFileException($"case {Id} has no entries")
        : new KeptLog(Rows, Rows.Length).Open(Id);

    private static JsonObject Entry(LogRow row)
    {
        var entry = new JsonObject
        {
            ["sequence"] = row.Sequence,
            ["turn"] = row.TurnId,
            ["at"] = row.At.UtcDateTime.ToString(TimeForm, CultureInfo.InvariantCulture),
            ["event"] = JsonNode.Parse(row.Body),
        };
        if (row.Aside is not null) entry["words"] = JsonNode.Parse(row.Aside);
        entry["hash"] = row.Hash;
        return entry;
    }

    private static LogRow Row(JsonElement entry) => new(
        entry.GetProperty("sequence").GetInt64(),
        Text(entry, "turn"),
        DateTimeOffset.ParseExact(
            Text(entry, "at"), TimeForm, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal),
        CanonicalJson.Of(entry.GetProperty("event")),
        entry.TryGetProperty("words", out var words) ? CanonicalJson.Of(words) : null,
        Text(entry, "hash"));

    private static string Text(JsonElement holder, string name) =>
        holder.GetProperty(name).GetString() ?? throw new FormatException($"{name} is empty");
}
