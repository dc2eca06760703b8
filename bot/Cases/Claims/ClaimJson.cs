using System.Text.Json;
using System.Text.Json.Serialization;

namespace DxAssistant.Cases.Claims;

/// <summary>The JSON form of claims, the same bytes each time.</summary>
[JsonSourceGenerationOptions(
    JsonSerializerDefaults.Web,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    AllowOutOfOrderMetadataProperties = true)]
[JsonSerializable(typeof(ClaimEvent))]
[JsonSerializable(typeof(ClaimSheet))]
[JsonSerializable(typeof(ClaimExport))]
[JsonSerializable(typeof(ClaimNews))]
internal sealed partial class ClaimJson : JsonSerializerContext
{
    /// <summary>A log entry's event as it is kept and hashed.</summary>
    public static string Write(ClaimEvent happened) => JsonSerializer.Serialize(happened, Default.ClaimEvent);

    /// <exception cref="JsonException">That is not an event this program knows.</exception>
    public static ClaimEvent Read(string body) =>
        JsonSerializer.Deserialize(body, Default.ClaimEvent) ?? throw new JsonException("the entry is null");
}
