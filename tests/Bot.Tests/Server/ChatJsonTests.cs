using System.Text.Json;
using DxAssistant.Bot.Tests.Conversation;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Server.Chat;

namespace DxAssistant.Bot.Tests.Server;

public sealed class ChatJsonTests
{
    [Fact]
    public void Options_Reply_IsWrittenAsTheCoreWritesIt()
    {
        Reply reply = ShippedContent.Assistant.Take(CaseState.New, new Message("t", new MessageBody.Opening())).Reply;
        string text = JsonSerializer.Serialize(new { reply }, ChatJson.Options);
        Assert.Equal($$"""{"reply":{{JsonSerializer.Serialize(reply, ConversationJson.Default.Reply)}}}""", text);
        Assert.Equal(text,
            JsonSerializer.Serialize(
                new { reply = JsonSerializer.Deserialize<Reply>(ReplyJson.Of(reply), ChatJson.Options) },
                ChatJson.Options));
    }
}
