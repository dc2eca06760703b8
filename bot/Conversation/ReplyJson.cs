using System.Runtime.CompilerServices;
using System.Text.Json;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation;

/// <summary>
/// Replies as JSON text, each written once as long as it lives: it goes to the log and to the screen, and many cases
/// share one.
/// </summary>
public static class ReplyJson
{
    private static readonly ConditionalWeakTable<Reply, string> Written = [];

    /// <summary>The text of a reply: ASCII, without blanks.</summary>
    public static string Of(Reply reply) => Written.GetValue(reply, Write);

    private static string Write(Reply reply) => JsonSerializer.Serialize(reply, ConversationJson.Default.Reply);
}
