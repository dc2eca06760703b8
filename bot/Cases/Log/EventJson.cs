using System.Text.Json;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Cases.Log;

/// <summary>Events to JSON and back.</summary>
internal static class EventJson
{
    /// <summary>An event in the one form that is hashed (<see cref="CanonicalJson"/>).</summary>
    public static string Write(CaseEvent happened) => happened is Replied { Reply: var reply }
        ? $$"""{"event":"replied","reply":{{ReplyJson.Of(reply)}}}"""
        : JsonSerializer.Serialize(happened, ConversationJson.Default.CaseEvent);

    /// <exception cref="JsonException">That is not an event this program knows.</exception>
    public static CaseEvent Read(string json) =>
        JsonSerializer.Deserialize(json, ConversationJson.Default.CaseEvent)
            ?? throw new JsonException("the entry is null");
}
