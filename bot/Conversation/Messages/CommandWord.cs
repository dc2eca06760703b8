using System.Text.Json.Serialization;

namespace DxAssistant.Conversation.Messages;

/// <summary>What can be asked of the conversation itself at any time.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<CommandWord>))]
public enum CommandWord
{
    /// <summary>Take the last answer back.</summary>
    [JsonStringEnumMemberName("back")] Back,

    /// <summary>Say why this step was chosen.</summary>
    [JsonStringEnumMemberName("why")] Why,

    /// <summary>Leave this check out.</summary>
    [JsonStringEnumMemberName("skip")] Skip,

    /// <summary>This cannot be done here.</summary>
    [JsonStringEnumMemberName("cannot")] Cannot,

    /// <summary>The check was done but its result is unclear.</summary>
    [JsonStringEnumMemberName("unsure")] Unsure,

    /// <summary>Say what can be typed.</summary>
    [JsonStringEnumMemberName("help")] Help,

    /// <summary>Say again where the case stands.</summary>
    [JsonStringEnumMemberName("again")] Again,

    /// <summary>Go no further, and leave the rest to somebody else.</summary>
    [JsonStringEnumMemberName("stop-here")] StopHere,

    /// <summary>Begin anew; the record keeps what was said before.</summary>
    [JsonStringEnumMemberName("start-over")] StartOver,
}
