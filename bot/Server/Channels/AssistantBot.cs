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
        string caseId = CaseOf(turnContext.Activity);
        if (!ActivityReader.TryRead(turnContext.Activity, out var message, out string? problem))
        {
            await turnContext.SendActivityAsync(MessageFactory.Text(problem), cancellationToken);
            return;
        }

        // On the web a case is opened by its page, so that a mistyped address does not make one.
        if (turnContext.Activity.ChannelId != LocalChatAdapter.Channel)
            await desk.OpenAsync(caseId, message.By, cancellationToken);
        await AnswerAsync(turnContext, await desk.TakeAsync(caseId, message, cancellationToken), cancellationToken);
    }

    protected override async Task OnMembersAddedAsync(
        IList<ChannelAccount> membersAdded, ITurnContext<IConversationUpdateActivity> turnContext,
        CancellationToken cancellationToken)
    {
        var activity = turnContext.Activity;
        if (membersAdded.FirstOrDefault(m => m.Id != activity.Recipient?.Id) is not { } person) return;
        var opened = await desk.OpenAsync(CaseOf(activity), person.Name ?? ActivityReader.Nameless, cancellationToken);
        await AnswerAsync(turnContext, opened, cancellationToken);
    }

    private static async Task AnswerAsync(ITurnContext turn, DeskAnswer answer, CancellationToken cancel)
    {
        turn.TurnState.Add(answer);
        if (answer is DeskAnswer.Answered answered) await turn.SendActivityAsync(ReplyActivity.From(answered), cancel);
    }

    private static string CaseOf(IActivity activity) => activity.ChannelId == LocalChatAdapter.Channel
        ? activity.Conversation.Id
        : CaseId.Of(activity.ChannelId ?? "", activity.Conversation.Id);
}
