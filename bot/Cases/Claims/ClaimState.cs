using System.Text.Json.Serialization;

namespace DxAssistant.Cases.Claims;

/// <summary>Where a claim stands.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<ClaimState>))]
public enum ClaimState
{
    /// <summary>Being put together: its sheet follows the case.</summary>
    [JsonStringEnumMemberName("draft")] Draft,

    /// <summary>Its sheet stands and may be handed in.</summary>
    [JsonStringEnumMemberName("ready")] Ready,

    [JsonStringEnumMemberName("submitted")] Submitted,

    [JsonStringEnumMemberName("approved")] Approved,

    [JsonStringEnumMemberName("declined")] Declined,

    /// <summary>Sent back for something that is missing; may be made ready anew.</summary>
    [JsonStringEnumMemberName("returned")] Returned,
}
