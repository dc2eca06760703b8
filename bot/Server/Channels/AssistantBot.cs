using DxAssistant.Cases;
using DxAssistant.Conversation.Messages;
using Microsoft.Bot.Builder;
using Microsoft.Bot.Schema;

namespace DxAssistant.Server.Channels;

/// <summary>The one handler of all channels: an activity in, a turn at the desk, the reply out.</summary>
internal sealed class AssistantBot(CaseDesk desk) : ActivityHandler
{
    protected override async Task OnMessageActivityAsync(
        ITurnContext<IMessageActivity> turnContext, CancellationToken cancellationToken)
    {
        string caseId = CaseOf(turnContext);
        if (!ActivityReader.TryRead(turnContext.Activity, out var message, out string? problem))
        {
            await turnContext.SendActivityAsync(MessageFactory.Text(problem), cancellationToken);
            return;
        }

        // On the web a case is opened by its page, so that a mistyped address does not make one.
        if (turnContext.Adapter is not LocalChatAdapter)
            await desk.OpenAsync(caseId, message.By, cancellationToken);
        long? only = turnContext.Adapter is LocalChatAdapter ? turnContext.Activity.ChannelData as long? : null;
        await AnswerAsync(turnContext, await desk.TakeAsync(caseId, message, only, cancellationToken),
            cancellationToken);
    }

    protected override Task OnConversationUpdateActivityAsync(
        ITurnContext<IConversationUpdateActivity> turnContext, CancellationToken cancellationToken)
    {
        // The channel's lists may hold null, and the base class looks into every member.
        var activity = turnContext.Activity;
        activity.MembersAdded = activity.MembersAdded?.OfType<ChannelAccount>().ToList();
        activity.MembersRemoved = activity.MembersRemoved?.OfType<ChannelAccount>().ToList();
        return base.OnConversationUpdateActivityAsync(turnContext, cancellationToken);
    }

    protected override async Task OnMembersAddedAsync(
        IList<ChannelAccount> membersAdded, ITurnContext<IConversationUpdateActivity> turnContext,
        CancellationToken cancellationToken)
    {
        var activity = turnContext.Activity;
        if (membersAdded.FirstOrDefault(m => m.Id != activity.Recipient?.Id) is not { } person) return;
        var opened = await desk.OpenAsync(CaseOf(turnContext), ActivityReader.NameOf(person), cancellationToken);
        await AnswerAsync(turnContext, opened, cancellationToken);
    }

    private static async Task AnswerAsync(ITurnContext turn, DeskAnswer answer, CancellationToken cancel)
    {
        turn.TurnState.Add(answer);

        // Who comes without a network between takes the desk's answer itself.
        if (answer is DeskAnswer.Answered answered && turn.Adapter is not LocalChatAdapter)
            await turn.SendActivityAsync(ReplyActivity.From(answered), cancel);
    }

    // Which adapter it came through, not which channel it says it is of: anybody can write the latter.
    private static string CaseOf(ITurnContext turn) => turn.Adapter is LocalChatAdapter
        ? turn.Activity.Conversation.Id
        : CaseId.Of(turn.Activity.ChannelId ?? "", turn.Activity.Conversation.Id);
}
