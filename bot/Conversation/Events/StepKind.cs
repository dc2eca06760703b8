using System.Text.Json.Serialization;

namespace DxAssistant.Conversation.Events;

/// <summary>What a step of the walk is.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<StepKind>))]
public enum StepKind
{
    [JsonStringEnumMemberName("check")] Check,
    [JsonStringEnumMemberName("repair")] Repair,
}
