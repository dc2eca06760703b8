using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using DxAssistant.Conversation;

namespace DxAssistant.Server.Chat;

/// <summary>JSON as the web chat speaks it: replies as the core writes them, the rest alike.</summary>
internal static class ChatJson
{
    public static JsonSerializerOptions Options { get; } = Make();

    private static JsonSerializerOptions Make()
    {
        var options = new JsonSerializerOptions(ConversationJson.Default.Options)
        {
            TypeInfoResolver = JsonTypeInfoResolver.Combine(
                ConversationJson.Default, new DefaultJsonTypeInfoResolver()),
        };
        options.Converters.Add(new ReplyConverter());
        options.MakeReadOnly();
        return options;
    }
}
