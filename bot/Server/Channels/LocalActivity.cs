using DxAssistant.Cases;
using DxAssistant.Conversation.Messages;
using Microsoft.Bot.Schema;

namespace DxAssistant.Server.Channels;

/// <summary>Activities of the local channel.</summary>
internal static class LocalActivity
{
    public static Activity Opening(string caseId, string by = ActivityReader.Nameless) =>
        new(ActivityTypes.ConversationUpdate)
    {
        Id = CaseDesk.OpeningTurn,
        Conversation = new ConversationAccount(id: caseId),
        MembersAdded = [new ChannelAccount("user", by)],
    };

    /// <param name="only">The last sequence number the message is meant for; null for whatever is there.</param>
    public static Activity Message(
        string caseId, string turnId, MessageBody body, string by = ActivityReader.Nameless, long? only = null) =>
            new(ActivityTypes.Message)
    {
        Id = turnId,
        Value = body,
        ChannelData = only,
        Conversation = new ConversationAccount(id: caseId),
        From = new ChannelAccount("user", by),
    };
}
