using System.Text.Json;
using System.Text.Json.Serialization;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Server.Chat;

/// <summary>Replies as they were written for the log already.</summary>
internal sealed class ReplyConverter : JsonConverter<Reply>
{
    public override Reply? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        JsonSerializer.Deserialize(ref reader, ConversationJson.Default.Reply);

    public override void Write(Utf8JsonWriter writer, Reply value, JsonSerializerOptions options) =>
        writer.WriteRawValue(ReplyJson.Of(value), skipInputValidation: true);
}
