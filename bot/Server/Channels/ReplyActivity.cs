using System.Text.Json;
using DxAssistant.Cases;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Replies;
using Microsoft.Bot.Builder;
using Microsoft.Bot.Schema;
using Newtonsoft.Json.Linq;

namespace DxAssistant.Server.Channels;

/// <summary>A reply as an activity: plain lines for any channel, taps as suggested actions, the whole reply as channel
/// data.</summary>
internal static class ReplyActivity
{
    public static Activity From(DeskAnswer.Answered answer)
    {
        var activity = MessageFactory.Text(string.Join("\n\n", PlainReply.Lines(answer.Reply)));
        activity.InputHint = answer.Reply.Question is null ? InputHints.AcceptingInput : InputHints.ExpectingInput;
        activity.ChannelData = JObject.Parse(JsonSerializer.Serialize(answer.Reply, ConversationJson.Default.Reply));
        if (answer.Reply.Question is { Options.IsEmpty: false } question) activity.SuggestedActions = Taps(question);
        return activity;
    }

    private static SuggestedActions Taps(OpenQuestion question) => new(
        actions: [.. question.Options.Select(option => new CardAction(
            ActionTypes.MessageBack, option.Label, text: option.Label, displayText: option.Label,
            value: new JObject { ["question"] = question.Id, ["choice"] = option.Key }))]);
}
