using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Cases.Jobs;
using DxAssistant.Cases.Log;
using DxAssistant.Cases.Photos;

namespace DxAssistant.Cases.Export;

/// <summary>
/// A whole case as one JSON document, in the form of <c>case.schema.json</c>. Taken in elsewhere it is the same
/// case, word for word, with the same hashes.
/// </summary>
/// <param name="Id">The name of the case.</param>
public sealed record CaseDocument(string Id, ImmutableArray<LogRow> Rows)
{
    /// <summary>The bytes of the photos that the log names and that are still there.</summary>
    public ImmutableArray<KeptPhoto> Photos { get; init; } = [];

    private const string Format = "dxassistant-case";
    private const int Version = 1;
    private const string TimeForm = "yyyy-MM-dd'T'HH:mm:ss.fff'Z'";

    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    /// <summary>The document as text.</summary>
    public string Write()
    {
        var root = new JsonObject
        {
            ["format"] = Format,
            ["version"] = Version,
            ["case"] = Id,
            ["entries"] = new JsonArray(Rows.Select(row => (JsonNode?)Entry(row)).ToArray()),
        };
        if (!Photos.IsEmpty) root["photos"] = new JsonArray([.. Photos.Select(photo => (JsonNode?)Picture(photo))]);
        return root.ToJsonString(Indented) + "\n";
    }

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
                throw new FormatException(
                    $"it has version {version}, this program knows {Version}: use a newer program");
            string id = Text(root, "case");
            if (!CaseId.IsWellFormed(id)) throw new FormatException("its case has no fit name");
            return new CaseDocument(id, [.. root.GetProperty("entries").EnumerateArray().Select(Row)])
            {
                Photos = root.TryGetProperty("photos", out var photos)
                    ? [.. photos.EnumerateArray().Select(Picture)]
                    : [],
            };
        }
        catch (Exception error) when (error is JsonException or KeyNotFoundException or FormatException
            or InvalidOperationException)
        {
            throw new CaseFileException($"that is not an exported case ({error.Message})", error);
        }
    }

    /// <summary>True for a file that begins like such a document, whatever else stands in it.</summary>
    public static bool IsIn(string file)
    {
        if (!File.Exists(file)) return false;
        using var text = new StreamReader(file);
        return text.Read() == '{';
    }

    /// <summary>The events, checked.</summary>
    /// <exception cref="CaseFileException">An entry was altered or is missing.</exception>
    public ImmutableArray<StoredEvent> Open() => Rows.IsEmpty
        ? throw new CaseFileException($"case {Id} has no entries")
        : new KeptLog(Rows, Rows.Length).Open(Id);

    /// <summary>The events and the photos, checked.</summary>
    /// <exception cref="CaseFileException">An entry or a photo was altered, is missing, or is of nobody's.</exception>
    public ImmutableArray<StoredEvent> OpenWhole()
    {
        var log = Open();
        var named = Job.Of(log).Photos.Select(photo => photo.Hash).ToHashSet(StringComparer.Ordinal);
        foreach (var photo in Photos)
        {
            if (!named.Contains(photo.Hash))
                throw new CaseFileException($"the log of case {Id} names no photo {photo.Hash}");
            if (Photo.Take(photo.Bytes)?.Hash != photo.Hash)
                throw new CaseFileException($"photo {photo.Hash} of case {Id} was altered");
        }

        return log;
    }

    private static JsonObject Picture(KeptPhoto photo) =>
        new() { ["hash"] = photo.Hash, ["data"] = Convert.ToBase64String(photo.Bytes) };

    private static KeptPhoto Picture(JsonElement photo) =>
        new(Text(photo, "hash"), Convert.FromBase64String(Text(photo, "data")));

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
